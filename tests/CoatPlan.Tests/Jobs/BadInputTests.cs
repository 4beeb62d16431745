using System.Text;
using CoatPlan.Jobs;
using CoatPlan.Problems;

namespace CoatPlan.Tests.Jobs;

/// <summary>Each row of "Bad input": one mistake put into a job that reads, and the one problem that follows.</summary>
public sealed class BadInputTests
{
    // Stands in a mistake where its problem must point, and is taken out before the text is read.
    public const char Place = '‸';

    [Fact]
    public void Where_one_figure_is_all_that_can_stand_it_is_said_alone() =>
        new Bounds(1, 1).ToString().ShouldBe("1");

    [Fact]
    public void What_goes_into_the_braces_of_a_shape_is_sent_there()
    {
        string text = JobFiles.Complete.Replace("sides: 2}}", "sides: 2}, less: [{disc: {diameter: 2 in}}]}", StringComparison.Ordinal);

        Problems(text).ShouldHaveSingleItem().ToString().ShouldEndWith("`less` stands beside `panel`, expected it inside the braces of `panel`: `{panel: {…, less: …}}`");
    }

    [Theory]
    // Unknown, missing and repeated keys
    [InlineData("finish-by: 2027", "‸fnish-by: 2027", "unknown-key", "`finish-by`")]
    [InlineData("  exhaust: 800", "  ‸exhuast: 800", "unknown-key", "`exhaust`")]
    [InlineData("width: 20 ft, height", "‸widht: 20 ft, height", "unknown-key", "`width`")]
    [InlineData("room: {length: 22 ft, width: 20 ft, ", "room: ‸{length: 22 ft, ", "missing-key", null)]
    [InlineData("coatplan: 1                       # format number\njob: Roadster engine bay\n", "‸coatplan: 1\n", "missing-key", null)]
    [InlineData("- name: Inner fender\n    count: 2\n    material: steel", "- ‸name: Inner fender\n    count: 2", "missing-key", null)]
    [InlineData("job: Roadster engine bay\n", "job: Roadster engine bay\n‸job: Again\n", "repeated-key", null)]
    [InlineData("preset: etch-primer-aerosol}", "preset: etch-primer-aerosol, ‸preset: rust-converter}", "repeated-key", null)]
    [InlineData("sides: 2}}", "sides: 2}, ‸less: [{disc: {diameter: 2 in}}]}", "unknown-key", null)]
    // Wrong types and units
    [InlineData("area: 8 ft2", "area: ‸8 ft", "wrong-unit", null)]
    [InlineData("edge: 6 ft", "edge: ‸6 ft2", "wrong-unit", null)]
    [InlineData("net: 12 oz", "net: ‸12 ft", "wrong-unit", null)]
    [InlineData("area: 8 ft2", "area: ‸8", "no-unit", "`8 ft2`")]
    [InlineData("area: 8 ft2", "area: ‸8 sqf", "unknown-unit", "`sqft`")]
    [InlineData("area: 8 ft2", "area: ‸eight", "not-a-number", null)]
    [InlineData("area: 8 ft2", "area: ‸[8 ft2]", "wrong-type", null)]
    [InlineData("area: 8 ft2", "area:‸", "wrong-type", null)]
    [InlineData("area: 8 ft2", "area: ‸1,5 m2", "comma", null)]
    [InlineData("area: 8 ft2", "area: ‸7-8 ft2", "range", null)]
    [InlineData("dew-point: 46 °F", "dew-point: ‸46", "no-unit", "`46 °F`")]
    [InlineData("dew-point: 46 °F", "dew-point: ‸46°", "wrong-unit", null)]
    [InlineData("dew-point: 46 °F", "humidity: ‸0.5", "no-unit", "`50 %`")]
    [InlineData("price: 9.50", "price: ‸$9.50", "not-a-number", null)]
    [InlineData("stays: true", "stays: ‸yes", "wrong-type", "`true`")]
    [InlineData("count: 2", "count: ‸2.5", "wrong-type", null)]
    [InlineData("count: 2", "count: ‸two", "wrong-type", null)]
    [InlineData("people: 1", "people: ‸{}", "wrong-type", null)]
    [InlineData("ignition: [gas water heater]", "ignition: [‸{a: b}]", "wrong-type", null)]
    [InlineData("start: 2027-05-14 16:00", "start: ‸2027-05-14", "not-a-time", null)]
    [InlineData("start: 2027-05-14 16:00", "start: ‸2027-02-30 16:00", "not-a-time", null)]
    [InlineData("start: 2027-05-14 16:00", "start: ‸2027-05-14 26:00", "not-a-time", null)]
    [InlineData("start: 2027-05-14 16:00", "start: ‸0027-05-14 16:00", "out-of-range", null)]
    // Out of range
    [InlineData("dew-point: 46 °F", "humidity: ‸140 %", "out-of-range", null)]
    [InlineData("area: 8 ft2", "area: ‸0 ft2", "out-of-range", null)]
    [InlineData("area: 8 ft2", "area: ‸-8 ft2", "out-of-range", null)]
    [InlineData("length: 12 in", "length: ‸0 in", "out-of-range", null)]
    [InlineData("area: 8 ft2", "area: ‸1e999 ft2", "out-of-range", null)]
    [InlineData("sides: 2", "sides: ‸3", "out-of-range", null)]
    [InlineData("people: 1", "people: ‸0", "out-of-range", null)]
    [InlineData("coats: 3}]\n  black-on-metal", "coats: ‸0}]\n  black-on-metal", "out-of-range", null)]
    [InlineData("low: 54 °F", "low: ‸540 °F", "out-of-range", null)]
    [InlineData("covers: 13 ft2", "solids: ‸120 %", "out-of-range", null)]
    [InlineData("covers: 13 ft2", "hiding: ‸93", "out-of-range", null)]
    [InlineData("covers: 13 ft2", "lightness: ‸101", "out-of-range", null)]
    [InlineData("covers: 13 ft2", "coats: ‸0-2", "out-of-range", null)]
    [InlineData("coatplan: 1", "coatplan: ‸2", "out-of-range", null)]
    // Unknown names and words
    [InlineData("system: black-on-metal", "system: ‸black-on-metall", "unknown-name", "`black-on-metal`")]
    [InlineData("{product: etch, coats: 1, only", "{product: ‸etsch, coats: 1, only", "unknown-name", "`etch`")]
    [InlineData("material: steel\n    finish: bare", "material: ‸stele\n    finish: bare", "unknown-word", "`steel`")]
    [InlineData("condition: [oily, chips]", "condition: [oily, ‸chip]", "unknown-word", "`chips`")]
    [InlineData("kind: wiring", "kind: ‸wirring", "unknown-word", "`wiring`")]
    [InlineData("preset: etch-primer-aerosol", "preset: ‸etch-primr-aerosol", "unknown-word", "`etch-primer-aerosol`")]
    [InlineData("only: bare", "only: ‸spots", "unknown-word", null)]
    [InlineData("surfaces:\n", "done: [{surface: ‸Inner fendr, operation: wash}]\nsurfaces:\n", "unknown-name", "`inner-fender`")]
    [InlineData("surfaces:\n", "done: [{surface: Inner fender, operation: ‸wsh}]\nsurfaces:\n", "unknown-word", "`wash`")]
    // Hours
    [InlineData("Fri: 16:00-21:00", "‸Fry: 16:00-21:00", "not-a-day", "`Fri`")]
    [InlineData("Fri: 16:00-21:00", "‸2027-13-01: 16:00-21:00", "not-a-day", null)]
    [InlineData("Fri: 16:00-21:00", "Fri: ‸16-21", "not-hours", null)]
    [InlineData("Fri: 16:00-21:00", "Fri: ‸16:00-25:00", "not-hours", null)]
    [InlineData("Fri: 16:00-21:00", "Fri: ‸16:00-16:00", "order", null)]
    [InlineData("08:00-12:00, 13:00", "08:00-13:30, ‸13:00", "order", null)]
    [InlineData("Fri: 16:00-21:00\n    Sat", "Fri: 22:00-09:00\n    ‸Sat", "order", null)]
    [InlineData("Fri: 16:00-21:00\n", "Fri: 16:00-21:00\n    ‸Friday: 08:00-09:00\n", "repeated-hours", null)]
    [InlineData("Fri: 16:00-21:00\n    Sat", "Sun-Tue: 08:00-09:00\n    ‸Sat", "repeated-hours", null)]
    [InlineData("    Fri: 16:00-21:00\n    Sat-Sun: [08:00-12:00, 13:00-18:00]", "    ‸Fri: none", "no-hours", null)]
    // Things that must agree
    [InlineData("finish-by: 2027-05-16", "finish-by: ‸2027-05-13", "order", null)]
    [InlineData("low: 54 °F, high: ", "low: 75 °F, high: ‸", "order", null)]
    [InlineData("area: 8 ft2\n", "area: 8 ft2\n    shape: ‸[{disc: {diameter: 2 in}}]\n", "one-of", null)]
    [InlineData("- name: Inner fender\n    count: 2\n    material: steel\n    finish: factory paint\n    condition: [oily, chips]\n    area: 8 ft2\n", "- ‸name: Inner fender\n    count: 2\n    material: steel\n", "one-of", null)]
    [InlineData("  exhaust: 800 ft3/min\n", "  volume: ‸80 m3\n", "one-of", null)]
    [InlineData("  room: {length: 22 ft, width: 20 ft, height: 9 ft}\n  exhaust", "  ‸exhaust", "one-of", null)]
    [InlineData("  room: {length: 22 ft, width: 20 ft, height: 9 ft}\n", "  ‸outdoors: false\n", "one-of", null)]
    [InlineData("    daily: {", "    steady: {air: 70 °F, humidity: 50 %}\n    daily: ‸{", "one-of", null)]
    [InlineData("daily: {low: 54 °F, high: 74 °F, dew-point: 46 °F}", "daily: ‸{low: 54 °F, high: 74 °F}", "one-of", null)]
    [InlineData("dew-point: 46 °F", "dew-point: 46 °F, humidity: ‸50 %", "one-of", null)]
    [InlineData("etch: {preset: etch-primer-aerosol", "‸etch: {covers: 8 ft2, times: {touch: 1 h}, recoat: after 1 h", "missing-key", null)]
    [InlineData("etch: {preset: etch-primer-aerosol", "‸etch: {limits: {air: 50-90 °F}, times: {touch: 1 h}, recoat: after 1 h", "missing-key", null)]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: ‸1 h", "not-a-window", "`after 1 h`")]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: ‸soon", "not-a-window", null)]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: ‸after 24", "no-unit", "`24 min`")]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: ‸2 h-1 h", "order", null)]
    [InlineData("recoat: [10 min-1 h, after 24 h]", "recoat: ‸[]", "empty-list", null)]
    [InlineData("covers: 13 ft2", "times: {touch: 1 h, handle: ‸30 min}", "order", null)]
    [InlineData("covers: 13 ft2", "limits: {air: ‸90-50 °F}", "order", null)]
    [InlineData("covers: 13 ft2", "limits: {air: ‸50 °F}", "wrong-type", null)]
    [InlineData("covers: 13 ft2", "coats: ‸3-2", "order", null)]
    [InlineData("covers: 13 ft2", "solvents: ‸{acetone: 60 %, toluene: 50 %}", "out-of-range", null)]
    [InlineData("covers: 13 ft2", "times-at: [{air: 60 °F, touch: 1 h}, {air: ‸60 °F, touch: 2 h}]", "repeated-name", null)]
    [InlineData("sides: 2}", "sides: 2, less: ‸[{panel: {length: 20 in, width: 10 in}}]}", "nothing-left", null)]
    [InlineData("sides: 2}", "sides: 2, less: ‸[{panel: {length: 8 in, width: 24 in}}]}", "nothing-left", null)]
    [InlineData("panel: {length: 12 in, width: 8 in, sides: 2}", "ring: {outer: 4 in, inner: ‸5 in}", "order", null)]
    [InlineData("panel: {length: 12 in, width: 8 in, sides: 2}", "bend: {diameter: 4 in, radius: ‸1 in}", "order", null)]
    [InlineData("{panel: {length: 12 in, width: 8 in, sides: 2}}", "{disc: {diameter: 1 in}, dome: ‸{diameter: 1 in, height: 1 in}}", "one-of", null)]
    [InlineData("{panel: {length: 12 in, width: 8 in, sides: 2}}", "‸{}", "one-of", null)]
    [InlineData("black-on-metal: [{product: etch, coats: 1}, {product: black, coats: 3}]", "black-on-metal: ‸[]", "empty-list", null)]
    [InlineData("name: Battery tray", "{name: B, id: x, material: steel, area: 1 ft2, system: black-on-metal}\n  - id: ‸x\n    name: Battery tray", "repeated-name", null)]
    [InlineData("surfaces:\n", "done: [{surface: battery-tray, layer: ‸3, coat: 1}]\nsurfaces:\n", "out-of-range", null)]
    [InlineData("surfaces:\n", "done: [‸{surface: battery-tray, layer: 1}]\nsurfaces:\n", "missing-key", null)]
    [InlineData("surfaces:\n", "done: [{surface: battery-tray, operation: ‸wash, layer: 1, coat: 1}]\nsurfaces:\n", "one-of", null)]
    [InlineData("surfaces:\n", "done: [‸{surface: battery-tray}]\nsurfaces:\n", "one-of", null)]
    [InlineData("surfaces:\n", "as-of: 2027-05-15 08:00\ndone: [{surface: battery-tray, operation: wash, at: ‸2027-05-15 08:01}]\nsurfaces:\n", "order", null)]
    [InlineData("surfaces:\n", "have: {black: ‸many}\nsurfaces:\n", "wrong-type", null)]
    [InlineData("surfaces:\n", "prices: {labour: ‸85}\nsurfaces:\n", "no-unit", "`85 /h`")]
    [InlineData("surfaces:\n", "prices: {currency: ‸dollars}\nsurfaces:\n", "wrong-type", null)]
    [InlineData("surfaces:\n", "built: ‸1066\nsurfaces:\n", "out-of-range", null)]
    public void One_mistake_is_one_problem_at_its_place(string right, string wrong, string code, string? mend)
    {
        int at = JobFiles.Complete.IndexOf(right, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, right);
        string marked = JobFiles.Complete[..at] + wrong + JobFiles.Complete[(at + right.Length)..];
        int place = marked.IndexOf(Place);
        int line = marked[..place].Count(c => c == '\n') + 1;
        int column = place - marked.LastIndexOf('\n', place);
        string text = marked.Remove(place, 1);

        var problem = Problems(text).ShouldHaveSingleItem();

        (problem.Line, problem.Column, problem.Code).ShouldBe((line, column, code), problem.ToString());
        problem.Mend.ShouldBe(mend, problem.ToString());
        problem.ToString().ShouldStartWith(FormattableString.Invariant($"weekend.job.yaml:{line}:{column}: "));
    }

    [Fact]
    public void Every_mistake_is_found_in_one_go()
    {
        string text = JobFiles.Complete
            .Replace("54 °F", "54", StringComparison.Ordinal)
            .Replace("count: 2", "conut: 2", StringComparison.Ordinal)
            .Replace("system: black-on-metal", "system: grey", StringComparison.Ordinal)
            .Replace("area: 8 ft2", "area: 8 ft", StringComparison.Ordinal);

        Problems(text).Select(problem => (problem.Line, problem.Code))
            .ShouldBe([(10, "no-unit"), (30, "unknown-key"), (34, "wrong-unit"), (43, "unknown-name")]);
    }

    [Theory]
    [InlineData("", "empty-file")]
    [InlineData("\n\n", "empty-file")]
    [InlineData("# nothing but a comment\n", "empty-file")]
    [InlineData("---\n", "empty-file")]
    [InlineData("null\n", "empty-file")]
    [InlineData("[]\n", "wrong-type")]
    [InlineData("just text\n", "wrong-type")]
    public void A_file_without_a_job_is_one_problem(string text, string code)
    {
        var problem = Problems(text).ShouldHaveSingleItem();

        problem.Code.ShouldBe(code);
        (problem.Line, problem.Column).ShouldBe((1, 1));
    }

    [Fact]
    public void A_binary_file_is_one_problem()
    {
        byte[] bytes = new byte[4096];
        new Random(1).NextBytes(bytes);

        JobReader.Read(bytes, "photo.jpg", Vocabulary.Contract).Problems.ShouldHaveSingleItem().Line.ShouldBeGreaterThan(0);
    }

    [Theory]
    [InlineData(new byte[] { (byte)'a', 0x0A, (byte)'b', 0xE9, 0x0A }, "not-utf8", 2, 2)]
    [InlineData(new byte[] { 0xFF, 0xFE, (byte)'a', 0 }, "not-utf8", 1, 1)]
    [InlineData(new byte[] { (byte)'a', 0 }, "binary", 1, 2)]
    [InlineData(new byte[] { 0xC3 }, "not-utf8", 1, 1)]
    public void Bytes_that_are_no_text_are_one_problem(byte[] bytes, string code, int line, int column)
    {
        var problem = JobReader.Read(bytes, "x", Vocabulary.Contract).Problems.ShouldHaveSingleItem();

        (problem.Code, problem.Line, problem.Column).ShouldBe((code, line, column));
    }

    [Fact]
    public void A_file_over_the_limit_is_one_problem()
    {
        byte[] bytes = new byte[JobText.MostBytes + 1];
        bytes.AsSpan().Fill((byte)'#');

        JobReader.Read(bytes, "x", Vocabulary.Contract).Problems.ShouldHaveSingleItem().Code.ShouldBe("too-large");
    }

    [Fact]
    public void A_file_of_nothing_but_mistakes_is_cut_off()
    {
        string text = string.Concat(Enumerable.Range(0, 20_000).Select(i => FormattableString.Invariant($"k{i}: v\n")));

        var problems = Problems(text);

        problems.Length.ShouldBeLessThanOrEqualTo(502);
        problems[^1].Code.ShouldBe("too-many");
    }

    [Fact]
    public void Hours_without_end_are_refused()
    {
        string dates = string.Concat(Enumerable.Range(0, 1001).Select(i => $"    {NodaTime.Text.LocalDatePattern.Iso.Format(new LocalDate(2027, 1, 1).PlusDays(i))}: none\n"));

        Problems(JobFiles.Complete.Replace("    Fri: 16:00-21:00\n", dates, StringComparison.Ordinal)).ShouldHaveSingleItem().Code.ShouldBe("too-many-values");
    }

    [Fact]
    public void A_cycle_and_an_alias_bomb_are_refused()
    {
        Problems("coatplan: 1\nsurfaces: &s\n  - *s\n").ShouldHaveSingleItem().Code.ShouldBe("cycle");
        var bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 60; i++) bomb.Append(System.Globalization.CultureInfo.InvariantCulture, $"a{i}: &a{i} [*a{i - 1}, *a{i - 1}]\n");
        Problems(bomb.ToString()).ShouldHaveSingleItem().Code.ShouldBe("too-many-values");
    }

    [Fact]
    public void Json_with_the_same_mistake_has_the_same_problem()
    {
        var problem = Problems("{\n  \"coatplan\": 1, \"job\": \"x\",\n  \"strat\": 1}").First(found => found.Code == "unknown-key");

        problem.ToString().ShouldBe("weekend.job.yaml:3:3: unknown key `strat` in the job, expected a key of the job; did you mean `start`?");
    }

    private static ImmutableArray<Problem> Problems(string text)
    {
        var reading = JobReader.Read(text, "weekend.job.yaml", Vocabulary.Contract);
        (reading.Job is null).ShouldBe(!reading.Problems.IsEmpty);
        return reading.Problems;
    }
}
