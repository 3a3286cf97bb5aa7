namespace ReworkThermal.App.Wording;

/// <summary>Sentences about what was assumed because it was not said.</summary>
internal static class Assumptions
{
    internal static string OnlyBoard(string board) => $"The joint is on the board '{board}', the only one at hand that it fits; --board names another.";

    internal static string Solder(string solder) => $"The joint holds {solder}, a common lead-free solder; --solder names another.";

    internal const string Flush = "Every later pass fills the joint up with the refill alloy, melts it in and takes it out again; all solder is molten and mixed each time.";

    internal static string FirstShare(string share) => $"The first pass adds {share} of the mix; --ratio names another share.";

    internal static string Removal(string name, string central, string low, string high) =>
        $"Each pass takes out {central} of the molten solder with the {name} ({low} to {high} is usual); --removal names another way.";

    internal static string Target(string celsius) => $"The mix shall flow at {celsius}, like tin-lead eutectic solder; --target-flow sets another temperature.";

    internal static string Gold(string mass, IReadOnlyList<string> shares, string way, string removed) =>
        $"All {mass} of the gold dissolve: soldered straight on it the joint holds {shares[0]} gold by mass; after one cycle of tinning and wicking {shares[1]}, after two {shares[2]} ({way}, {removed} taken each time). Above 3 % (from memory, the trade's usual limit) joints turn brittle: tin and wick twice.";

    internal static string Filled => "The joint is filled through, with hollow fillets on both sides.";

    internal static string Wire(string diameter, string flux) => $"Wire lengths are for {diameter} wire with {flux} flux; --wire names another diameter.";
}
