namespace CoatPlan.App.Desk;

/// <summary>What a person can ask of the desk; which key asks for it is not the desk's business.</summary>
internal enum Word
{
    /// <summary>Open the place with the surfaces.</summary>
    GoSurfaces,

    /// <summary>Open the place with the steps.</summary>
    GoSequence,

    /// <summary>Open the place with what to have.</summary>
    GoSupplies,

    /// <summary>Open the place with the hours.</summary>
    GoTimeline,

    /// <summary>Open the place with the air.</summary>
    GoAir,

    /// <summary>Open the place with the sheets.</summary>
    GoSheets,

    /// <summary>Open the place with every field of the job.</summary>
    GoFields,

    /// <summary>The next place, or the next value while typing.</summary>
    Next,

    /// <summary>The place before.</summary>
    Previous,

    /// <summary>One up.</summary>
    Up,

    /// <summary>One down.</summary>
    Down,

    /// <summary>One to the left.</summary>
    Left,

    /// <summary>One to the right.</summary>
    Right,

    /// <summary>A page up.</summary>
    PageUp,

    /// <summary>A page down.</summary>
    PageDown,

    /// <summary>To the first.</summary>
    First,

    /// <summary>To the last.</summary>
    Last,

    /// <summary>Change what is chosen, or take what was typed or picked.</summary>
    Enter,

    /// <summary>Mark or unmark, where several can be picked; tick the chosen step off as done.</summary>
    Mark,

    /// <summary>Compare readings with the limits of the chosen coat.</summary>
    Judge,

    /// <summary>Open everything about the chosen surface.</summary>
    Inside,

    /// <summary>Add a surface.</summary>
    Add,

    /// <summary>Copy the chosen surface.</summary>
    Copy,

    /// <summary>Delete the chosen surface.</summary>
    Delete,

    /// <summary>Move the chosen surface one up.</summary>
    MoveUp,

    /// <summary>Move the chosen surface one down.</summary>
    MoveDown,

    /// <summary>Take back the last change.</summary>
    Undo,

    /// <summary>Make a change again that was taken back.</summary>
    Redo,

    /// <summary>Write the job file.</summary>
    Save,

    /// <summary>Read the job file again.</summary>
    Reload,

    /// <summary>Write the sheets.</summary>
    WriteSheets,

    /// <summary>Fewer hours, wider.</summary>
    ZoomIn,

    /// <summary>More hours, narrower.</summary>
    ZoomOut,

    /// <summary>Rank the starts of the job.</summary>
    When,

    /// <summary>Say how likely the job is done in time.</summary>
    Chance,

    /// <summary>Set the plan beside another one.</summary>
    Compare,

    /// <summary>Say how the chosen figure came about.</summary>
    Explain,

    /// <summary>Read why the plan is not as asked, the ways out, and what it warns of.</summary>
    Troubles,

    /// <summary>Empty what is typed.</summary>
    Empty,

    /// <summary>Every key and what it does.</summary>
    Help,

    /// <summary>Everything that can be done, to choose from.</summary>
    Menu,

    /// <summary>Leave what is open without taking it.</summary>
    Back,

    /// <summary>Leave the program.</summary>
    Quit,
}
