using CoatPlan.App;
using CoatPlan.App.Desk;
using CoatPlan.Tests.Plans;

namespace CoatPlan.Tests.Desk;

/// <summary>Desks for tests, with a small job on them and everything done at once.</summary>
internal static class Desks
{
    /// <summary>A job in a hand that is not ours: comments, blank lines, odd spacing, that must all survive.</summary>
    public const string SmallJob = """
        # Bay of the roadster. Keep this comment.
        coatplan: 1
        job: Small bay      # a comment behind a value
        start: 2027-05-14 16:00
        place:
          volume: 100 m3
          exhaust: 20 m3/min
          weather:
            steady: {air: 70 °F,   humidity: 40 %}

        crew:
          people: 1
          hours: {Fri: 16:00-21:00, Sat-Sun: [08:00-12:00, 13:00-18:00]}
        products:
          black: {preset: underhood-black-aerosol, name: Satin black, package: {net: 12 oz, price: 9.50}}
        systems:
          all-black: [{product: black, coats: 2}]
        surfaces:
          # the big ones
          - name: Inner fender
            count: 2
            material: steel
            finish: factory paint
            condition: [chips, oily]
            area:   8 ft2   # of one
            stays: true
            system: all-black

          # the small one
          - {name: Bracket, material: steel, finish: factory paint, area: 1 ft2, system: all-black}

        """;

    /// <summary>Reads jobs as the program does, and gives each a plan made by hand that has its surfaces: quick, for tests of what is around a plan.</summary>
    public static Workshop Quick { get; } = JobSource.Workshop(Sources.Usual) with { Sketch = (ready, _) => PlanByHand(ready), Plan = (ready, _) => PlanByHand(ready) };

    /// <summary>A desk with the small job, not on disk.</summary>
    public static JobDesk Small() => Of(JobFile.Unnamed(SmallJob));

    /// <summary>A desk with the small job, planned in earnest.</summary>
    public static JobDesk Planned() => new(JobFile.Unnamed(SmallJob), JobSource.Workshop(Sources.Usual), static work => work(), static work => work());

    /// <summary>A desk with a file.</summary>
    /// <param name="file">The file.</param>
    public static JobDesk Of(JobFile file) => new(file, Quick, static work => work(), static work => work());

    private static PlannedJob PlanByHand(ReadyJob ready)
    {
        var plan = SamplePlan.Weekend();
        return PlannedJob.Alone(plan with
        {
            Job = ready.Job.Name,
            Units = ready.Job.Units,
            Surfaces =
            [
                .. ready.Job.Surfaces.Select(surface => plan.Surfaces[0] with
                {
                    Id = surface.Id,
                    Name = surface.Name,
                    Count = surface.Count,
                    AreaM2 = surface.Area?.SquareMeters ?? 1,
                    Material = surface.Material,
                    Finish = surface.Finish,
                    Condition = surface.Conditions,
                    System = surface.System,
                    Stays = surface.Stays,
                    Cans = (surface.Area?.SquareMeters ?? 1) * surface.Count,
                }),
            ],
            Supplies = [plan.Supplies[0] with { Cans = (int)Math.Ceiling(ready.Job.Surfaces.Sum(surface => (surface.Area?.SquareMeters ?? 1) * surface.Count)) }, .. plan.Supplies[1..]],
        });
    }

    /// <summary>Types a value into the chosen cell.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="column">The column.</param>
    /// <param name="typed">The value.</param>
    /// <returns>Whether it was taken.</returns>
    public static bool Type(this JobDesk desk, SurfaceColumn column, string typed)
    {
        desk.Choose(desk.SurfaceAt, column);
        desk.Do(Word.Enter);
        return desk.Take(typed);
    }

    /// <summary>Picks words for the chosen cell.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="column">The column.</param>
    /// <param name="words">The words, all of them marked or unmarked in turn where several can be picked.</param>
    public static void Pick(this JobDesk desk, SurfaceColumn column, params string[] words)
    {
        desk.Choose(desk.SurfaceAt, column);
        desk.Do(Word.Enter);
        var picker = desk.Picking.ShouldNotBeNull();
        foreach (var word in words)
        {
            picker.GoTo(picker.Rows.Select(row => row.Word).ToList().IndexOf(word));
            desk.Do(Word.Mark);
        }

        desk.Do(Word.Enter);
    }
}
