using CoatPlan.Areas;
using CoatPlan.Presets;
using Operation = CoatPlan.Prep.Operation;

namespace CoatPlan.Supplies;

/// <summary>Which consumables an operation uses by area, one of several that would do.</summary>
internal static class ConsumableChoice
{
    private const string VeryFinePad = "pad-maroon";

    /// <summary>Words of consumables, each for one going-over of the operation's area on one surface.</summary>
    public static ImmutableArray<string> For(Operation operation, MeasuredSurface surface, Catalogue catalogue)
    {
        var greasy = surface.Surface.Conditions.Any(word => catalogue.Condition(word).Greasy);
        return operation.Word switch
        {
            "degrease" => greasy ? ["degreaser-greasy", "cloth-greasy"] : ["degreaser-light", "cloth"],
            "degrease-again" => ["degreaser-light", "cloth"],
            "solvent-clean" => ["wax-remover", "cloth"],
            "final-wipe" => ["wax-remover", "wipe-pair"],
            "tack" => ["tack-cloth"],
            "derust" => [Derust(operation, catalogue.Material(surface.Surface.Material))],
            "featheredge" => ByGrit(operation),
            "scuff" => IsPadWork(operation) ? [VeryFinePad] : ByGrit(operation),
            _ => [],
        };
    }

    /// <summary>Whether an operation goes over the bare spots only.</summary>
    public static bool IsOnSpots(Operation operation) => operation.Word is "derust" or "convert" or "featheredge";

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
