namespace ReworkThermal.App.Screens.State;

/// <summary>One line that answers the last key.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="IsComplaint">Whether something could not be done.</param>
internal sealed record Notice(string Text, bool IsComplaint)
{
    internal static readonly Notice None = new(string.Empty, false);

    internal static Notice Said(string text) => new(text, false);

    internal static Notice Complaint(string text) => new(text, true);
}
