namespace CoatPlan.Tests.Walls;

/// <summary>The desk knows no terminal; keys and colours are said in one place each.</summary>
public class ScreenWallTests
{
    private static readonly CompiledAssembly s_app = CompiledAssembly.Open("coatplan.dll");

    [Fact]
    public void The_desk_names_no_type_of_the_terminal()
    {
        From("CoatPlan.App.Desk").Where(use => use.ToAssembly.StartsWith("Terminal.Gui", StringComparison.Ordinal)).Select(use => use.ToString()).ShouldBeEmpty();
    }

    [Fact]
    public void The_desk_names_no_screen_and_no_command()
    {
        From("CoatPlan.App.Desk").Where(use => use.ToNamespace is "CoatPlan.App.Screens" or "CoatPlan.App.Commands").Select(use => use.ToString()).ShouldBeEmpty();
    }

    [Fact]
    public void Keys_are_said_in_one_file()
    {
        s_app.Uses.Where(use => use.From != "CoatPlan.App.Screens.Keys" && SaysAKey(use)).Select(use => use.ToString()).ShouldBeEmpty();
    }

    [Fact]
    public void Colours_are_said_in_one_file()
    {
        s_app.Uses.Where(use => use.From != "CoatPlan.App.Screens.Palette" && SaysAColour(use)).Select(use => use.ToString()).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("get_F1", true)]
    [InlineData(".ctor", true)]
    [InlineData("op_Implicit", true)]
    [InlineData("op_Equality", false)]
    [InlineData("", false)]
    public void To_compare_keys_is_not_to_say_one(string member, bool says)
    {
        SaysAKey(new TypeUse("CoatPlan.App.Screens.Any", "CoatPlan.App.Screens", "Terminal.Gui.Input.Key", "Terminal.Gui.Input", "Terminal.Gui", member, 0)).ShouldBe(says);
    }

    private static IEnumerable<TypeUse> From(string space) =>
        s_app.Uses.Where(use => use.FromNamespace == space || use.FromNamespace.StartsWith(space + ".", StringComparison.Ordinal));

    /// <summary>A static getter of the key type, or a key made from a letter, a code or a text.</summary>
    private static bool SaysAKey(TypeUse use)
    {
        if (use.To != "Terminal.Gui.Input.Key" || use.ToAssembly != "Terminal.Gui")
        {
            return false;
        }

        return use.Member is ".ctor" or "op_Implicit" or "TryParse"
            || (use.Member.StartsWith("get_", StringComparison.Ordinal)
                && typeof(global::Terminal.Gui.Input.Key).GetProperty(use.Member[4..])?.GetMethod is { IsStatic: true });
    }

    private static bool SaysAColour(TypeUse use) =>
        use.ToAssembly == "Terminal.Gui" && use.To is "Terminal.Gui.Drawing.Color" or "Terminal.Gui.Drawing.ColorName16" or "Terminal.Gui.Drawing.StandardColor"
        || use is { To: "Terminal.Gui.Drawing.Attribute", Member: ".ctor" };
}
