using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;

namespace CoatPlan.Jobs.Reading;

/// <summary>Reads <c>systems</c>.</summary>
internal static class SystemReading
{
    /// <summary>Reads the systems in the order of the file.</summary>
    /// <param name="job">The job.</param>
    /// <param name="products">Keys of the products that a layer may name.</param>
    public static ImmutableArray<PaintSystem> Read(MapReading job, IReadOnlySet<string> products)
    {
        var systems = ImmutableArray.CreateBuilder<PaintSystem>();
        foreach (var entry in job.Entries("systems"))
        {
            string what = $"the system `{entry.Key.Text}`";
            var items = Values.Items(entry.Value, what, "a list of layers", job.Context);
            if (entry.Value is ListNode && items.IsEmpty) job.Context.Problems.Add(entry.Value.Mark, Sentences.EmptyList(what, "one layer or more"));
            var layers = items.Select(item => Layer(MapReading.Of(item, JobKeys.Layer, job.Context), products)).OfType<PaintLayer>();
            systems.Add(new() { Key = entry.Key.Text, Layers = [.. layers], Mark = entry.Key.Mark });
        }

        return systems.ToImmutable();
    }

    private static PaintLayer? Layer(MapReading? layer, IReadOnlySet<string> products)
    {
        if (layer is null) return null;
        string? product = layer.Text("product");
        if (product is not null && !products.Contains(product) && !layer.Context.Problems.IsFull) layer.Note("product", Sentences.UnknownName("product", product, products));
        return new()
        {
            Product = product ?? "",
            Coats = layer.Whole("coats"),
            Mist = layer.Flag("mist") ?? false,
            OnlyBare = layer.Word("only") is not null,
            Mark = layer.Mark,
        };
    }
}
