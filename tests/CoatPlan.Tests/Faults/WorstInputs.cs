using System.Text;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Faults;

/// <summary>The real program on the inputs that would take the most memory, with no more of it than the promise leaves besides the runtime: each is refused.</summary>
public sealed class WorstInputs : IDisposable
{
    // Of 200 MB the runtime and its code take some sixty.
    private const string HeapBytes = "0x8000000";

    private readonly TempFolder folder = new();

    [Theory]
    [InlineData("one line of sixteen megabytes", ":1:1: ", "too long")]
    [InlineData("two million rows that are none", ":2:1: ", "time")]
    [InlineData("a forecast by the second", ":200002:1: ", "too many rows")]
    public void A_forecast(string kind, string where, string said)
    {
        var job = folder.File("a.job.yaml", Desks.SmallJob.Replace("steady: {air: 70 °F,   humidity: 40 %}", "hours: x.csv", StringComparison.Ordinal));
        File.ReadAllText(job).ShouldContain("x.csv");
        const string Header = "time,air °F,humidity %\n";
        folder.File("x.csv", kind switch
        {
            "one line of sixteen megabytes" => string.Concat(Enumerable.Repeat("x,", 8_000_000)),
            "two million rows that are none" => Header + string.Concat(Enumerable.Repeat("x,y,z\n", 2_000_000)),
            _ => Header + string.Concat(Enumerable.Range(0, 400_000)
                .Select(second => $"{new LocalDateTime(2027, 5, 14, 0, 0).PlusSeconds(second).ToString("uuuu-MM-dd HH:mm:ss", System.Globalization.CultureInfo.InvariantCulture)},68,52\n")),
        });

        var told = Told("check", job);

        told.ShouldContain("x.csv" + where);
        told.ShouldContain(said);
    }

    [Fact]
    public void Presets_of_many_values()
    {
        var job = folder.File("a.job.yaml", Desks.SmallJob);
        var text = new StringBuilder("products:\n");
        for (var i = 0; i < 70_000; i++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"  p{i}: {{x: 1, y: 2}}\n");
        Directory.CreateDirectory(folder.File("presets"));
        folder.File("presets/many.yaml", text.ToString());

        Told("check", job, "--presets", folder.File("presets")).ShouldContain("many.yaml:");

        for (var i = 0; i < 40; i++)
            folder.File($"presets/{i}.yaml", text.ToString());
        Told("check", job, "--presets", folder.File("presets")).ShouldContain("together larger than 2 MB");
    }

    [Theory]
    [InlineData("[", 2_000_000, ":2:40: ", "nested too deeply")]
    [InlineData("&a [*a, ", 200_000, ":2:5: ", "stands inside what it repeats")]
    [InlineData("{a: 1, b: [x, y], c: ", 90_000, ":2:789: ", "nested too deeply")]
    [InlineData("- {nme: x, matrial: stel, sytem: al}\n", 50_000, ":14287:9: ", "too many values")]
    public void A_job(string part, int times, string where, string said)
    {
        var job = folder.File("a.job.yaml", "notes: \n" + string.Concat(Enumerable.Repeat(part, times)));

        var told = Told("check", job);

        told.ShouldContain("a.job.yaml" + where);
        told.ShouldContain(said);
    }

    public void Dispose() => folder.Dispose();

    private string Told(params string[] arguments)
    {
        if (OperatingSystem.IsWindows())
            return CommandRun.Of(arguments).Errors;

        // Refused, with exit code 2: a heap that is full would end it with another.
        var said = OtherProgram.Run(folder.Path, "env",
            [$"DOTNET_GCHeapHardLimit={HeapBytes}", "sh", "-c", "\"$@\" 2>&1 || echo \"exit code $?\"", "sh", Path.Combine(AppContext.BaseDirectory, "coatplan"), .. arguments]);
        said.ShouldEndWith("exit code 2\n", customMessage: said[..Math.Min(said.Length, 1000)]);
        return said;
    }
}
