namespace CoatPlan.Presets;

/// <summary>How well a figure of the trade is vouched for, strongest first.</summary>
public enum Status
{
    /// <summary>The document, or a full copy of it, was read.</summary>
    Published,

    /// <summary>Read in another text that quotes or relies on the document.</summary>
    SecondHand,

    /// <summary>Follows by arithmetic from other rows.</summary>
    Computed,

    /// <summary>Usual in the trade, without a single authority.</summary>
    CommonPractice,

    /// <summary>Set by judgement, inside or near what is usual; free to change.</summary>
    Estimate,

    /// <summary>Nobody read it for this work: look it up before a sheet rests on it.</summary>
    FromMemory,
}
