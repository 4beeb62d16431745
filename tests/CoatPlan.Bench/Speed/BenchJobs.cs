using System.Globalization;
using System.Text;
using CoatPlan.Timetable;
using NodaTime.Text;

namespace CoatPlan.Bench.Speed;

/// <summary>Jobs of any size for measuring, the same on every machine: three systems, of which one primes bare spots only, in a garage with cool nights.</summary>
internal static class BenchJobs
{
    // Turned over in step with the surface's number, so that each size has the same mixture.
    private static readonly string[] Materials = ["steel", "cast iron", "aluminium", "steel", "ABS"];
    private static readonly string[] Finishes = ["bare", "factory paint", "unknown", "repaint"];
    private static readonly string[] Conditions = ["light rust", "oily, chips", "sound", "scaly rust", "road grime, scratches", "peeling"];
    private static readonly string[] Masks = ["", "{what: stud, kind: thread, edge: 1 ft}", "", "{what: loom, kind: wiring, edge: 4 ft}, {what: plate, kind: plate, edge: 14 in}"];
    private static readonly string[] Systems = ["black", "grey", "clear"];

    // A file may hold 100,000 values, a surface has some twenty.
    private const int MostInAFile = 4000;

    /// <summary>The text of a job.</summary>
    /// <param name="surfaces">How many surfaces, 1 or more.</param>
    /// <param name="done">Lines under <c>done</c>, with the time at which they were true; empty for a job that is not begun.</param>
    /// <param name="first">The number of its first surface, from 0.</param>
    public static string Text(int surfaces, string done = "", int first = 0)
    {
        var text = new StringBuilder("""
            coatplan: 1
            job: To be measured
            start: 2027-05-14 16:00
            place:
              room: {length: 22 ft, width: 20 ft, height: 9 ft}
              exhaust: 800 ft3/min
              weather: {daily: {low: 54 °F, high: 74 °F, dew-point: 46 °F}}
            crew: {people: 4, hours: {Mon-Fri: 16:00-21:00, Sat-Sun: [08:00-12:00, 13:00-18:00]}}
            products:
              etch: {preset: etch-primer-aerosol}
              filler: {preset: filler-primer-aerosol}
              black: {preset: underhood-black-aerosol}
              grey: {preset: enamel-aerosol, lightness: mid}
              clear: {preset: clear-aerosol}
              silver: {preset: aluminium-colour-aerosol}
            systems:
              black: [{product: etch, coats: 1, only: bare}, {product: black, coats: 3}]
              grey: [{product: filler, coats: 2}, {product: grey, coats: 2}]
              clear: [{product: silver, coats: 2}, {product: clear, coats: 2}]
            surfaces:

            """);
        for (var i = first; i < first + surfaces; i++)
        {
            var mask = Masks[i / 3 % Masks.Length];
            text.Append(CultureInfo.InvariantCulture, $"  - {{name: Part {i + 1}, material: {Materials[i % Materials.Length]}, finish: {Finishes[i % Finishes.Length]}, ")
                .Append(CultureInfo.InvariantCulture, $"condition: [{Conditions[i % Conditions.Length]}], area: {1 + i % 7 * 0.5} ft2, system: {Systems[i % Systems.Length]}")
                .Append(i % 20 == 1 ? ", stays: true" : "")
                .Append(mask.Length > 0 ? $", mask: [{mask}]" : "")
                .Append("}\n");
        }

        return text.Append(done).ToString();
    }

    /// <summary>A job that is not begun, of more surfaces than a file may hold.</summary>
    /// <param name="surfaces">How many surfaces, 1 or more.</param>
    public static ReadyJob NotBegun(int surfaces)
    {
        var parts = Enumerable.Range(0, surfaces).Chunk(MostInAFile).Select(part => Ready(Text(part.Length, first: part[0]))).ToArray();
        var job = parts[0].Job with { Surfaces = [.. parts.SelectMany(part => part.Job.Surfaces)] };
        return new ReadyJob(job, parts[0].Labels, parts[0].Forecast, parts[0].Trade);
    }

    /// <summary>A job one weekend in: what its plan has ended by Saturday noon is done, the rest is to be planned.</summary>
    /// <param name="surfaces">How many surfaces, 1 or more.</param>
    public static ReadyJob UnderWay(int surfaces) => Ready(TextUnderWay(surfaces));

    /// <summary>The text of such a job, the last line of which tells of the step that was done last.</summary>
    /// <param name="surfaces">How many surfaces, 1 or more.</param>
    public static string TextUnderWay(int surfaces)
    {
        var now = new LocalDateTime(2027, 5, 15, 12, 0);
        var plan = Planner.Plan(Ready(Text(surfaces)), SearchDepth.Quick);
        var done = new StringBuilder("as-of: 2027-05-15 12:00\ndone:\n");
        foreach (var step in plan.Steps.Where(step => step.End <= now))
        {
            done.Append("  - {");
            if (!step.Surfaces.IsEmpty)
                done.Append(CultureInfo.InvariantCulture, $"surfaces: [{string.Join(", ", step.Surfaces)}], ");
            done.Append(step.Coat is { } coat
                    ? string.Create(CultureInfo.InvariantCulture, $"layer: {step.Layer}, coat: {coat}, ")
                    : $"operation: {step.Kind}, ")
                .Append(CultureInfo.InvariantCulture, $"at: {LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm").Format(step.End)}, took: {step.HandsMin} min}}\n");
        }

        return Text(surfaces, done.ToString());
    }

    /// <summary>The same job with nothing worked out for it yet, since a job keeps what its plans rest on.</summary>
    /// <param name="job">The job.</param>
    public static ReadyJob Fresh(ReadyJob job) => new(job.Job, job.Labels, job.Forecast, job.Trade);

    /// <summary>A job of its text, read and checked.</summary>
    /// <param name="text">The text.</param>
    /// <param name="before">The job before a change of its text; null for none.</param>
    /// <exception cref="ArgumentException">The text is no job.</exception>
    public static ReadyJob Ready(string text, ReadyJob? before = null)
    {
        var intake = JobIntake.Read(text, "measured.job.yaml", Trade.Standard, _ => FileText.Unreadable("no forecast is named"), before);
        return intake.Ready ?? throw new ArgumentException(string.Join('\n', intake.Problems), nameof(text));
    }
}
