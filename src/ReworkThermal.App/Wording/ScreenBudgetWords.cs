namespace ReworkThermal.App.Wording;

/// <summary>Words about heat budgets on the screens.</summary>
internal static class ScreenBudgetWords
{
    internal const string NoSite = "board or joint missing";
    internal const string NoBoard = "board not known";
    internal const string NoJoint = "joint not known";
    internal const string NoTool = "neither iron nor hot air is set";
    internal const string NotSettled = "the settled state of the board over the preheater was not found";
    internal const string NoMelting = "the melting of the solder could not be computed";

}
