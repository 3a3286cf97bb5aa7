namespace ReworkThermal.App.Screens.Desks;

/// <summary>What came of teaching the bench.</summary>
internal abstract record LessonAnswer
{
    private LessonAnswer()
    {
    }

    /// <summary>The model of board rests on so many touches now.</summary>
    internal sealed record Learned(int Touches) : LessonAnswer;

    /// <summary>It was kept, and nothing was learned.</summary>
    /// <param name="Reason">One clause.</param>
    internal sealed record NotLearned(string Reason) : LessonAnswer;

    /// <summary>A touch does not count any more, but what it taught stays.</summary>
    /// <param name="Reason">Why, one clause.</param>
    internal sealed record NotTakenBack(string Reason) : LessonAnswer;

    /// <summary>A touch that does not count any more was taken back; so many are left.</summary>
    internal sealed record TakenBack(int Touches) : LessonAnswer;
}
