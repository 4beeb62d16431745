using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Prep;
using CoatPlan.Presets;
using UnitsNet;
using Operation = CoatPlan.Prep.Operation;

namespace CoatPlan.Tests.Prep;

/// <summary>Jobs that say only what matters to prep: every class is a product under its own name, a system is its layers joined by +.</summary>
/// <remarks><c>~etch-primer-aerosol+enamel-aerosol</c> is an etch primer on bare spots only, then enamel.</remarks>
internal static class PrepJob
{
    public const string Enamel = "enamel-aerosol";
    public const string EtchAndEnamel = "etch-primer-aerosol+enamel-aerosol";
    public const string EtchSpotsAndEnamel = "~etch-primer-aerosol+enamel-aerosol";

    public static Catalogue Catalogue => BuiltInPresets.Read();

    public static Job Of(params JobSurface[] surfaces) => new()
    {
        Name = "Prep",
        Start = new LocalDateTime(2027, 5, 14, 8, 0),
        Place = new Place
        {
            Volume = Volume.FromCubicMeters(110),
            Weather = new SteadyWeather { Air = Temperature.FromDegreesFahrenheit(70), Humidity = Ratio.FromPercent(50) },
        },
        Crew = new Crew { People = 1, Hours = [] },
        Products = [.. Vocabulary.Contract.ProductPresets.Select(preset => new JobProduct { Key = preset, Preset = preset })],
        Systems = [.. surfaces.Select(surface => surface.System).Distinct().Select(System)],
        Surfaces = [.. surfaces],
    };

    public static JobSurface Surface(
        string name = "Bracket",
        string material = "steel",
        string finish = "bare",
        string system = EtchAndEnamel,
        bool stays = false,
        string[]? condition = null,
        string[]? near = null,
        MaskItem[]? masks = null) => new()
        {
            Id = name.ToLowerInvariant().Replace(' ', '-'),
            Name = name,
            Material = material,
            Finish = finish,
            Conditions = [.. condition ?? ["sound"]],
            Area = Area.FromSquareMeters(1),
            Spread = Ratio.FromPercent(15),
            Relief = 1,
            System = system,
            Stays = stays,
            Near = [.. near ?? []],
            Masks = [.. masks ?? []],
        };

    public static Sequence Sequence(params JobSurface[] surfaces) => Sequence(Of(surfaces));

    public static Sequence Sequence(Job job) =>
        PrepSequence.Build(job, Catalogue, Labels.Resolve(job, Catalogue).Labels!, SurfaceAreas.Measure(job, Catalogue), PrepTexts.Standard);

    public static string[] Words(this Sequence sequence) => [.. sequence.Operations.Select(operation => operation.Word)];

    public static Operation The(this Sequence sequence, string word) => sequence.Operations.Single(operation => operation.Word == word);

    public static string[] Codes(this Sequence sequence) => [.. sequence.Warnings.Select(warning => warning.Code)];

    private static PaintSystem System(string key) => new()
    {
        Key = key,
        Layers = [.. key.Split('+').Select(layer => new PaintLayer { Product = layer.TrimStart('~'), OnlyBare = layer.StartsWith('~') })],
    };
}
