namespace CoatPlan.Jobs.Editing;

/// <summary>A stretch of text and what takes its place.</summary>
internal readonly record struct TextChange(int Start, int End, string New)
{
    public string In(string text) => string.Concat(text.AsSpan(0, Start), New, text.AsSpan(End));
}
