using CoatPlan.Areas;
using CoatPlan.Presets;
using Operation = CoatPlan.Prep.Operation;

namespace CoatPlan.Supplies;

/// <summary>Which consumables an operation uses by area, one of several that would do.</summary>
internal static class ConsumableChoice
{
    private const string VeryFinePad = "pad-maroon";

    private static readonly ImmutableArray<string> Greasy = ["degreaser-greasy", "cloth-greasy"];
    private static readonly ImmutableArray<string> Light = ["degreaser-light", "cloth"];
    private static readonly ImmutableArray<string> Solvent = ["wax-remover", "cloth"];
    private static readonly ImmutableArray<string> Wipes = ["wax-remover", "wipe-pair"];
    private static readonly ImmutableArray<string> Tack = ["tack-cloth"];
    private static readonly ImmutableArray<string> Pad = [VeryFinePad];

    /// <summary>Words of consumables, each for one going-over of the operation's area on one surface.</summary>
    public static ImmutableArray<string> For(Operation operation, MeasuredSurface surface, Catalogue catalogue) =>
        operation.Word switch
        {
            "degrease" => IsGreasy(surface, catalogue) ? Greasy : Light,
            "degrease-again" => Light,
            "solvent-clean" => Solvent,
            "final-wipe" => Wipes,
            "tack" => Tack,
            "derust" => [Derust(operation, catalogue.Material(surface.Surface.Material))],
            "featheredge" => ByGrit(operation),
            "scuff" => IsPadWork(operation) ? Pad : ByGrit(operation),
            _ => [],
        };

    /// <summary>Whether an operation goes over the bare spots only.</summary>
    public static bool IsOnSpots(Operation operation) => operation.Word is "derust" or "convert" or "featheredge";

    private static bool IsGreasy(MeasuredSurface surface, Catalogue catalogue) =>
        surface.Surface.Conditions.Any(word => catalogue.Condition(word).Greasy);

    /// <summary>No steel wire on what is not steel or iron: it leaves rust and scratches.</summary>
    private static string Derust(Operation operation, Material material)
    {
        if (!material.IsFerrous)
            return VeryFinePad;
        return operation.HotWork ? "wire-wheel" : "wire-brush";
    }

    private static bool IsPadWork(Operation operation) =>
        operation.Grits.IsEmpty || (operation.Grits is ["P400"] && operation.MakesDust);

    /// <summary>A sheet for each grit of the way, grits that one kind of sheet covers counted once.</summary>
    private static ImmutableArray<string> ByGrit(Operation operation) =>
        [.. operation.Grits.Select(grit => SheetOf(int.Parse(grit.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture))).Distinct()];

    private static string SheetOf(int grit) => grit switch
    {
        <= 100 => "sheet-p80",
        <= 220 => "sheet-p180",
        <= 360 => "sheet-p320",
        <= 500 => "sheet-p400",
        _ => "sheet-p600",
    };
}
