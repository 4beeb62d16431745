using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Prep;
using CoatPlan.Presets;

namespace CoatPlan.Paint;

/// <summary>What is left in cans that were weighed after a coat, against what the next coat takes.</summary>
/// <param name="Product">Key of the product.</param>
/// <param name="After">The coat after which they were weighed.</param>
/// <param name="Left">Packages left that will still spray, at least 0.</param>
/// <param name="Next">Packages that the next coat on the same surfaces takes, at least 0.</param>
/// <param name="Rest">Packages that all further coats of it on those surfaces take, the next one among them.</param>
public sealed record WeighedCan(string Product, DoneEntry After, double Left, double Next, double Rest)
{
    /// <summary>Whether they last for the next coat.</summary>
    public bool Lasts => Next <= Left;

    /// <summary>Warnings of cans that will run out before the next coat is done.</summary>
    /// <param name="weighed">The weighed cans.</param>
    /// <param name="labels">The labels of the job.</param>
    public static ImmutableArray<Warning> Warnings(ImmutableArray<WeighedCan> weighed, Labels labels)
    {
        ArgumentNullException.ThrowIfNull(labels);
        return [.. weighed.Where(can => !can.Lasts).Select(can => new Warning("cans-run-out", can.After.Surfaces[0], can.Product, string.Create(
            CultureInfo.InvariantCulture,
            $"What was weighed after coat {can.After.Coat} of {labels[can.Product].Name} holds {can.Left:0.##} of a can that will still spray; the next coat takes {can.Next:0.##}. Have another can shaken before it starts, or it runs out in the middle.")))];
    }

    /// <summary>The weighed cans of a job, in the order of its entries; entries without a mass or volume left are passed over.</summary>
    /// <param name="job">Its done entries.</param>
    /// <param name="coats">Its coats at one station.</param>
    public static ImmutableArray<WeighedCan> Of(Job job, Coats coats)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(coats);
        return [.. job.Done.Select(entry => Of(entry, coats)).OfType<WeighedCan>()];
    }

    private static WeighedCan? Of(DoneEntry entry, Coats coats)
    {
        if (entry is not { Layer: { } layer, Coat: { } coat, Cans: { } cans })
            return null;

        var on = coats.All.Where(one => one.Layer == layer && entry.Surfaces.Contains(one.Surface)).ToArray();
        if (on.Length == 0 || LeftIn(cans, on[0].On.Label) is not { } left)
            return null;
        return new WeighedCan(on[0].Product, entry, left, on.Where(one => one.Coat == coat + 1).Sum(one => one.Packages), on.Where(one => one.Coat > coat).Sum(one => one.Packages));
    }

    /// <summary>What is left of what sprays: the last of each can stays in it.</summary>
    private static double? LeftIn(Amount cans, Label label)
    {
        double? packages = cans switch
        {
            { Mass: { } mass } when label.NetMass is { } net => mass / net,
            { Volume: { } volume } when label.NetVolume is { } net => volume / net,
            _ => null,
        };
        return packages is { } known ? Math.Max(0, known - label.Method.Residue.DecimalFractions) : null;
    }
}
