namespace CoatPlan.Tests.Properties;

/// <summary>A job that uses every key and every word of the contract plans without a change of code.</summary>
public class EveryWordTests
{
    private static readonly string s_text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "jobs", "every-word.job.yaml"));

    private static readonly ImmutableArray<string> s_keys =
    [
        "coatplan", "job", "notes", "units", "start", "finish-by", "as-of", "reserve", "tape-limit", "built", "place", "room", "exhaust", "mixing", "hold", "heater", "cools-in",
        "spray-spots", "rack", "ignition", "weather", "daily", "low", "high", "dew-point", "crew", "people", "stations", "hours", "set-up", "put-away", "products", "systems", "surfaces",
        "have", "prices", "labour", "markup", "tax", "tax-on", "currency", "checks", "cylinder-pressures", "pressure-test", "cap", "end", "after", "done", "surface", "operation", "at", "took",
        "readings", "air", "metal", "humidity", "film", "note", "preset", "name", "package", "net", "price", "pack", "covers", "solids", "density", "dry-film", "hiding", "lightness", "coats",
        "method", "loss", "drying", "times", "dust", "touch", "tape", "handle", "through", "service", "times-at", "recoat", "topcoat", "missed", "use-within", "limits", "above-dew", "heat",
        "heat-peak", "cure", "for", "solvents", "hazards", "label-says", "product", "mist", "only", "id", "count", "material", "finish", "condition", "area", "shape", "spread", "relief", "form",
        "gauge", "stays", "faces", "bare-share", "lead-test", "near", "system", "mask", "what", "kind", "edge", "panel", "disc", "ring", "box", "tube", "cone", "dome", "bend", "channel",
        "angle", "less", "sides", "ends", "inside", "base", "top", "height", "diameter", "radius", "web", "flange", "leg-a", "leg-b", "outer", "inner", "length", "width",
    ];

    private static readonly ImmutableArray<string> s_words =
    [
        "steel", "cast iron", "aluminium", "cast aluminium", "stainless steel", "zinc-plated steel", "cadmium-plated steel", "copper alloy", "ABS", "polyolefin", "fibreglass", "rubber",
        "bare", "factory paint", "repaint", "powder coat", "unknown", "sound", "oily", "road grime", "scratches", "chips", "peeling", "chalky", "light rust", "scaly rust", "pitted",
        "white corrosion", "burnt", "opening", "wiring", "plastic", "glass", "thread", "ground", "sealing face", "mating face", "friction face", "bolt seat", "sensor", "plate", "moving part",
        "fluid", "flammable", "isocyanate", "chromate", "lead", "zinc", "acid", "irritant", "sensitiser", "brake reservoir", "fuel line", "airbag", "air-conditioning line", "hot part",
        "aerosol", "brush", "spray gun", "solvent", "oxidation", "waterborne", "moisture", "two-part", "scuff", "wait", "strip", "vertical", "level", "mixed", "positive", "negative", "casting",
        "bracket", "good", "fair", "poor", "black", "dark", "mid", "light", "white", "none", "sealed", "metric",
    ];

    [Fact]
    public void Every_key_turns_up()
    {
        s_keys.Where(key => !System.Text.RegularExpressions.Regex.IsMatch(s_text, $@"(^|[\s{{])-?\s*{key}:")).ShouldBeEmpty();
    }

    [Fact]
    public void Every_word_turns_up()
    {
        s_words.Concat(JobGen.Presets).Where(word => !s_text.Contains(word, StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [Fact]
    public void A_job_with_every_word_plans()
    {
        ShouldPlan(s_text);
    }

    [Theory]
    [InlineData("room: {length: 24 ft, width: 20 ft, height: 9 ft}", "volume: 120 m3")]
    [InlineData("heater: sealed", "heater: open")]
    [InlineData("daily: {low: 58 °F, high: 78 °F, dew-point: 44 °F}", "daily: {low: 58 °F, high: 78 °F, humidity: 45 %}")]
    [InlineData("daily: {low: 58 °F, high: 78 °F, dew-point: 44 °F}", "steady: {air: 70 °F, humidity: 50 %}")]
    [InlineData("tax-on: materials", "tax-on: all")]
    [InlineData("units: metric", "units: us")]
    public void So_does_one_with_a_word_that_excludes_another(string old, string @new)
    {
        s_text.ShouldContain(old);

        ShouldPlan(WithFewSurfaces().Replace(old, @new, StringComparison.Ordinal));
    }

    private static void ShouldPlan(string text)
    {
        var plan = DrawnPlan.Of(text, null, out string problems);

        problems.ShouldBeEmpty();
        plan!.Plan.Reasons.ShouldBeEmpty();
        plan.Violations(text, null).Select(violation => violation.ToString()).ShouldBeEmpty();
    }

    /// <summary>The same job up to its third surface, which plans sooner.</summary>
    private static string WithFewSurfaces() =>
        s_text[..s_text.IndexOf("  - {name: Engine block", StringComparison.Ordinal)] + s_text[s_text.IndexOf("have:", StringComparison.Ordinal)..];
}
