namespace CoatPlan.App.Desk;

/// <summary>What a line of a page is.</summary>
internal enum PageLineKind
{
    /// <summary>A sentence, or a value with what it is called.</summary>
    Text,

    /// <summary>A heading.</summary>
    Heading,

    /// <summary>Something that may be overlooked, such as where a figure comes from.</summary>
    Quiet,

    /// <summary>Something that warns.</summary>
    Warning,
}
