namespace CoatPlan.App.Screens;

/// <summary>What a piece of text is, for the palette to choose its look. Meaning is always in the text too.</summary>
internal enum Ink
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>A heading, or what matters most on a line.</summary>
    Strong,

    /// <summary>What may be overlooked.</summary>
    Quiet,

    /// <summary>The row or value that the keys act on.</summary>
    Chosen,

    /// <summary>The cell of the chosen row that the keys act on.</summary>
    ChosenCell,

    /// <summary>The bar of the program: title, places.</summary>
    Bar,

    /// <summary>The place of the bar that is open.</summary>
    BarChosen,

    /// <summary>A key's name.</summary>
    KeyName,

    /// <summary>Something that is wrong, or that warns.</summary>
    Warning,

    /// <summary>Work with the hands.</summary>
    Hands,

    /// <summary>Spraying.</summary>
    Spray,

    /// <summary>A film that dries.</summary>
    Drying,

    /// <summary>A window in which a coat may start.</summary>
    Window,

    /// <summary>Hours in which nobody works.</summary>
    Closed,
}
