namespace CoatPlan.Jobs.Yaml;

/// <summary>A scalar.</summary>
internal sealed class TextNode : Node
{
    /// <summary>The text, unquoted and unfolded.</summary>
    public required string Text { get; init; }

    /// <summary>Whether it stands there plainly, so that <c>true</c> and <c>null</c> may mean more than text.</summary>
    public bool IsPlain { get; init; }

    /// <summary>Whether it is a block text (<c>|</c> or <c>&gt;</c>).</summary>
    public bool IsBlock { get; init; }

    /// <summary>Whether nothing is there at all.</summary>
    public bool IsMissing => IsPlain && Text.Length == 0;

    /// <summary>Whether it says that there is no value: <c>null</c> or <c>~</c>.</summary>
    public bool IsNull => IsPlain && Text is "null" or "Null" or "NULL" or "~";
}
