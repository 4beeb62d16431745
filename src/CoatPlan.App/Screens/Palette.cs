using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace CoatPlan.App.Screens;

/// <summary>How each ink looks. With this file and <see cref="Keys"/>, a look or a key is changed in one place.</summary>
/// <remarks>
/// Plain text keeps the terminal's own colours, so that light and dark terminals both work. Colours differ in lightness as well as in hue,
/// and every ink that means something also has bold, underline or reverse, or a character of its own.
/// </remarks>
internal sealed class Palette
{
    private static readonly Color Own = Color.None;

    private readonly ImmutableDictionary<Ink, Attribute> looks;

    private Palette(ImmutableDictionary<Ink, Attribute> looks) => this.looks = looks;

    /// <summary>For terminals with colour.</summary>
    public static Palette Coloured { get; } = new(new Dictionary<Ink, Attribute>
    {
        [Ink.Plain] = new(Own, Own),
        [Ink.Strong] = new(Own, Own, TextStyle.Bold),
        [Ink.Quiet] = new(Own, Own, TextStyle.Faint),
        [Ink.Chosen] = new(Color.Black, Color.Gray),
        [Ink.ChosenCell] = new(Color.White, Color.Blue, TextStyle.Bold),
        [Ink.Bar] = new(Color.White, Color.DarkGray),
        [Ink.BarChosen] = new(Color.Black, Color.White, TextStyle.Bold),
        [Ink.KeyName] = new(Own, Own, TextStyle.Bold),
        [Ink.Warning] = new(Color.BrightRed, Own, TextStyle.Bold),
        [Ink.Hands] = new(Color.Black, Color.Cyan),
        [Ink.Spray] = new(Color.White, Color.Magenta, TextStyle.Bold),
        [Ink.Drying] = new(Color.Yellow, Own),
        [Ink.Window] = new(Color.Green, Own),
        [Ink.Closed] = new(Color.DarkGray, Own),
    }.ToImmutableDictionary());

    /// <summary>For NO_COLOR: the terminal's own colours throughout, told apart by bold, underline and reverse.</summary>
    public static Palette Colourless { get; } = new(new Dictionary<Ink, Attribute>
    {
        [Ink.Plain] = new(Own, Own),
        [Ink.Strong] = new(Own, Own, TextStyle.Bold),
        [Ink.Quiet] = new(Own, Own),
        [Ink.Chosen] = new(Own, Own, TextStyle.Underline),
        [Ink.ChosenCell] = new(Own, Own, TextStyle.Reverse),
        [Ink.Bar] = new(Own, Own, TextStyle.Reverse),
        [Ink.BarChosen] = new(Own, Own, TextStyle.Bold | TextStyle.Underline),
        [Ink.KeyName] = new(Own, Own, TextStyle.Bold),
        [Ink.Warning] = new(Own, Own, TextStyle.Bold),
        [Ink.Hands] = new(Own, Own, TextStyle.Reverse),
        [Ink.Spray] = new(Own, Own, TextStyle.Bold),
        [Ink.Drying] = new(Own, Own),
        [Ink.Window] = new(Own, Own, TextStyle.Underline),
        [Ink.Closed] = new(Own, Own),
    }.ToImmutableDictionary());

    /// <summary>The look of an ink.</summary>
    /// <param name="ink">The ink.</param>
    public Attribute Of(Ink ink) => looks[ink];

    /// <summary>The looks of the toolkit's own text field.</summary>
    public Scheme Scheme => new(Of(Ink.Plain))
    {
        Normal = Of(Ink.Plain),
        Focus = Of(Ink.ChosenCell),
        Active = Of(Ink.ChosenCell),
        Highlight = Of(Ink.Chosen),
        Editable = Of(Ink.ChosenCell),
        ReadOnly = Of(Ink.Plain),
        Disabled = Of(Ink.Quiet),
    };
}
