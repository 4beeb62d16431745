using CoatPlan.Areas;
using CoatPlan.Jobs;
using CoatPlan.Paint;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Tests.Paint;

/// <summary>Jobs and labels that say only what a test is about.</summary>
internal static class PaintSamples
{
    public static Catalogue Catalogue { get; } = BuiltInPresets.Read();

    /// <summary>A steel panel of so many square metres, relief 1.</summary>
    public static JobSurface Panel(double squareMetres, string id = "panel") => new()
    {
        Id = id,
        Name = id,
        Material = "steel",
        Finish = "factory paint",
        Area = UnitsNet.Area.FromSquareMeters(squareMetres),
        Relief = 1,
        Spread = JobDefaults.SpreadOfFigure,
        System = "system",
    };

    public static PaintLayer Layer(string product = "black", int? coats = 2) => new() { Product = product, Coats = coats };

    public static Job Job(ImmutableArray<JobSurface> surfaces, params ImmutableArray<PaintLayer> layers) => new()
    {
        Name = "bench panels",
        Start = new LocalDateTime(2027, 5, 14, 8, 0),
        Place = new Place
        {
            Volume = Volume.FromCubicMeters(100),
            Exhaust = VolumeFlow.FromCubicMetersPerMinute(20),
            Weather = new SteadyWeather { Air = Temperature.FromDegreesFahrenheit(70), Humidity = Ratio.FromPercent(50) },
        },
        Crew = new Crew { People = 1, Hours = [] },
        Systems = [new PaintSystem { Key = "system", Layers = layers.IsDefaultOrEmpty ? [Layer()] : layers }],
        Surfaces = surfaces,
    };

    /// <summary>The label of a class, a can of it with a round coverage where the test wants one.</summary>
    public static Label Label(string preset = "underhood-black-aerosol", string key = "black")
    {
        var product = Catalogue.Product(preset);
        return new Label
        {
            Key = key,
            Preset = preset,
            Name = product.Title,
            Method = product.Method,
            Drying = product.Drying,
            NetMass = product.NetMass,
            NetVolume = product.NetVolume,
            Price = null,
            Pack = 1,
            Covers = product.Covers,
            SolidsByVolume = product.SolidsByVolume,
            Density = product.Density,
            DryFilm = product.DryFilm,
            HoldsOnVertical = product.HoldsOnVertical,
            Hiding = product.Hiding,
            MustHide = product.MustHide,
            Lightness = product.Lightness,
            CoatsLeast = product.CoatsLeast,
            CoatsMost = product.CoatsMost,
            Loss = product.Method.Loss,
            AtAir = product.AtAir,
            AtHumidity = product.AtHumidity,
            Times = product.Times,
            TimesAt = [],
            Recoat = product.Recoat,
            Topcoat = product.Topcoat,
            Missed = product.Missed,
            UseWithin = product.UseWithin,
            Limits = product.Limits,
            Heat = product.Heat,
            HeatPeak = product.HeatPeak,
            Cure = [],
            Solvents = product.Solvents,
            Hazards = product.Hazards,
            LabelSays = [],
            Q10 = product.Q10,
            Family = product.Family,
            Role = product.Role,
            Rust = product.Rust,
            WantsTooth = product.WantsTooth,
            SoftenedByBrakeFluid = product.SoftenedByBrakeFluid,
            Origins = ImmutableSortedDictionary<string, Origin>.Empty,
        };
    }

    /// <summary>A can that covers one square metre, by its label alone.</summary>
    public static Label OneSquareMetreCan => Label() with { Covers = UnitsNet.Area.FromSquareMeters(1), SolidsByVolume = null };

    public static Coats Coats(Job job, params Label[] labels) =>
        PaintWork.Of(job, SurfaceAreas.Measure(job, Catalogue), Labels(labels), Catalogue);

    public static ProductDemand Demand(Job job, params Label[] labels) => Demand(job, [], labels);

    public static ProductDemand Demand(Job job, ImmutableArray<SprayedCoat> sprayed, params Label[] labels) =>
        PaintDemand.Count(job, Coats(job, labels), sprayed, Labels(labels), Catalogue.Figures)[0];

    private static Labels Labels(Label[] labels) => new(labels.Length == 0 ? [OneSquareMetreCan] : [.. labels]);
}
