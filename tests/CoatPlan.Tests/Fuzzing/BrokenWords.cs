using CoatPlan.Quantities;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Fuzzing;

/// <summary>Whatever is typed, as a quantity or as a command line, is answered.</summary>
public sealed class BrokenWords
{
    private static readonly string[] Parts =
        ["1", "12", "1/2", "3 1/4", "1,152", ".", ",", "-", "–", "±", "e9", "e999", " ", "  ", "\u00a0", "ft", "ft2", "sq", "sqft", "in", "\"", "'", "mil", "µm", "μm", "um", "°F", "°C", "F", "K", "%", "oz", "fl oz", "gal", "pt", "qt", "mL", "l", "lb", "kg", "g", "min", "h", "d", "s", "cfm", "m3/min", "psi", "kPa", "/h", "after", "within", "none", "g/ml", "°", "^2", "²", "³", "mph", "∞", "NaN", "٣", "İ", "ı", "\0", "\ud800", "𝟛"];

    private static readonly string[] Arguments =
        ["plan", "explain", "check", "sheets", "done", "when", "chance", "compare", "new", "presets", "schema", "completion", "manual", "suggest", "open", "--json", "--width", "--presets", "--hours-from", "--to", "--paper", "--at", "--took", "--cans", "--note", "--as-of", "--draws", "--trace", "--help", "--version", "-h", "-?", "--", "-", "-1", "80", "a4", "16:10", "photograph", "finish", "bash", "JOB", "MISSING", "FOLDER", "OUT", "", " ", "=", "--json=true", "--width=80", "[suggest]", "[diagram]", "@JOB", "/?", "\0", "\ud800", "\n", "%n", "*", "~", "cans", "step", "supplies[0].cans", "supplies[99999999999]", "steps[-1]", "İ"];

    [Fact]
    public void A_quantity() => Fuzz.Run(2000, [], random =>
    {
        var text = string.Concat(Enumerable.Range(0, random.Next(1, 6)).Select(_ => Parts[random.Next(Parts.Length)]));
        Answered(QuantityText.Length(text).Ok);
        Answered(QuantityText.Area(text).Ok);
        Answered(QuantityText.Volume(text).Ok);
        Answered(QuantityText.Mass(text).Ok);
        Answered(QuantityText.Temperature(text).Ok);
        Answered(QuantityText.TemperatureDelta(text).Ok);
        Answered(QuantityText.Duration(text).Ok);
        Answered(QuantityText.Ratio(text).Ok);
        Answered(QuantityText.Flow(text).Ok);
        Answered(QuantityText.Pressure(text).Ok);
        Answered(QuantityText.Density(text).Ok);
        Answered(QuantityText.MoneyPerHour(text).Ok);
        Answered(QuantityText.Angle(text).Ok);
        Answered(QuantityText.Speed(text).Ok);
        Answered(QuantityText.Number(text).Ok);
        Answered(QuantityText.Money(text).Ok);
        Answered(QuantityText.TemperatureRange(text).Ok);
        Answered(QuantityText.RatioRange(text).Ok);
        Answered(QuantityText.DurationRange(text).Ok);
        QuantityText.DimensionOf(text);
    });

    [Fact]
    public void A_command_line()
    {
        using var folder = new TempFolder();
        var job = folder.File("a.job.yaml", Desks.SmallJob.Replace("coats: 2", "coats: two", StringComparison.Ordinal));
        Directory.CreateDirectory(folder.File("folder"));

        Fuzz.Run(150, [], random =>
        {
            string[] arguments = [.. Enumerable.Range(0, random.Next(0, 6)).Select(_ => Arguments[random.Next(Arguments.Length)] switch
            {
                "JOB" => job,
                "MISSING" => folder.File("missing.job.yaml"),
                "FOLDER" => folder.File("folder"),
                "OUT" => folder.File("out"),
                "@JOB" => "@" + job,
                var other => other,
            })];
            // What would write where the tests run, by a name that was not made for it.
            if (arguments.Contains("new"))
                arguments = ["new", folder.File("folder")];

            var run = CommandRun.Of(arguments);

            run.ExitCode.ShouldBeOneOf([0, 2, 3], $"{string.Join(' ', arguments)}: {run.Errors}");
            run.Errors.ShouldNotContain("   at CoatPlan");
            if (run.ExitCode == 2)
                run.Errors.ShouldNotBeEmpty();
        });
    }

    // A figure or what is wrong with it, and no exception: that is all that is asked here.
    private static void Answered(bool ok) => _ = ok;
}
