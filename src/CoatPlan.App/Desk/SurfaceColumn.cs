namespace CoatPlan.App.Desk;

/// <summary>The columns of the table of surfaces, left to right.</summary>
internal enum SurfaceColumn
{
    /// <summary>What the person calls it.</summary>
    Piece,

    /// <summary>How many.</summary>
    Count,

    /// <summary>What it is made of.</summary>
    Material,

    /// <summary>What is on it.</summary>
    Finish,

    /// <summary>What is wrong with it.</summary>
    Condition,

    /// <summary>How large one is.</summary>
    Area,

    /// <summary>What goes on it.</summary>
    System,

    /// <summary>How many cans it takes; from the plan.</summary>
    Cans,

    /// <summary>When it can be handled; from the plan.</summary>
    Ready,
}
