namespace CoatPlan.App.Desk;

/// <summary>The places of the terminal UI.</summary>
internal enum DeskPlace
{
    /// <summary>What is to be refinished.</summary>
    Surfaces,

    /// <summary>The steps in their order.</summary>
    Sequence,

    /// <summary>What to have.</summary>
    Supplies,

    /// <summary>The hours.</summary>
    Timeline,

    /// <summary>The air, the respirator, the cautions.</summary>
    Air,

    /// <summary>What can be put on paper.</summary>
    Sheets,

    /// <summary>Every field of the job.</summary>
    Fields,
}
