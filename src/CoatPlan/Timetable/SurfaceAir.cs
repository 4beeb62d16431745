using System.Collections.Concurrent;
using CoatPlan.Climate;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using CoatPlan.Scheduling;
using Windows = CoatPlan.Climate.Windows;

namespace CoatPlan.Timetable;

/// <summary>The air around surfaces that are worked on together: the slowest of them decides when a film is ready, the quickest when a window closes.</summary>
internal sealed class SurfaceAir
{
    /// <summary>What dries after the horizon of the climate counts as this minute: past every plan, and never earlier than any other.</summary>
    public const int Never = int.MaxValue / 4;

    private readonly PlaceClimate climate;
    private readonly double slowness;
    private readonly ImmutableArray<SurfaceCurve> metals;
    private readonly ConcurrentDictionary<string, CoatStarts> starts = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(string Label, DryingStage Stage), DryingGoals> stages = [];
    private readonly ConcurrentDictionary<(string Label, Duration Wait), DryingGoals> waits = [];
    private readonly ConcurrentDictionary<(string Label, RecoatGap Gap, int Window), (DryingGoals Opens, DryingGoals? Closes)> windows = [];
    private readonly ConcurrentDictionary<Asked, Func<int, int>> moments = [];
    private readonly ConcurrentDictionary<(string Label, int Work), Func<int, int?>> firstStarts = [];

    /// <summary>The air around pieces.</summary>
    /// <param name="climate">The work place.</param>
    /// <param name="metals">How the pieces follow its air, each way once; the air's own where no piece is meant.</param>
    /// <param name="slowness">How much longer every film takes than it should, 1 or more.</param>
    public SurfaceAir(PlaceClimate climate, ImmutableArray<SurfaceCurve> metals, double slowness = 1)
    {
        this.slowness = slowness;
        this.climate = climate;
        this.metals = metals.IsEmpty ? [climate.Metal(Duration.Zero)] : metals;
    }

    /// <summary>The label's own time to a stage; zero for what no label speaks of.</summary>
    public static Duration LabelTime(Label label, FilmStage stage) => stage switch
    {
        FilmStage.Dust => label.Times.Dust,
        FilmStage.Touch => label.Times.Touch,
        FilmStage.Tape => label.Times.Tape,
        FilmStage.Handle => label.Times.Handle,
        FilmStage.Through => label.Times.Through,
        _ => Duration.Zero,
    };

    /// <summary>From a minute to the first permitted start of a coat at or after it; null: none within the horizon. One function for all coats alike.</summary>
    public Func<int, int?> FirstStarts(CoatTask coat, int work) =>
        firstStarts.TryGetValue((coat.Label.Key, work), out var known) ? known : RememberedFirstStarts(coat, work);

    /// <summary>From the end of a coat to the minute at which every piece has reached a stage, and so many minutes more. One function for all coats alike.</summary>
    public Func<int, int> Reaching(CoatTask coat, FilmStage stage, int minutesMore = 0) => Known(coat, Question.Reaches, (int)stage, minutesMore);

    /// <summary>The same, and no sooner than a wait that is told at the label's conditions.</summary>
    public Func<int, int> ReachingAfter(CoatTask coat, FilmStage stage, int leastMinutes) =>
        leastMinutes == 0 ? Reaching(coat, stage) : Known(coat, Question.ReachesAfter, (int)stage, leastMinutes);

    /// <summary>From the end of a coat to the opening of one of its windows on every piece, and no sooner than after a rest.</summary>
    public Func<int, int> Opening(CoatTask film, RecoatGap gap, int window, int restMinutes = 0) =>
        Known(film, gap == RecoatGap.Itself ? Question.OpensToItself : Question.OpensToAnother, window, restMinutes);

    /// <summary>From the start of a coat to the closing of one of its windows on the first piece, and no later than so many minutes after the start.</summary>
    public Func<int, int> Closing(CoatTask film, RecoatGap gap, int window, int withinMinutes = Never) =>
        Known(film, gap == RecoatGap.Itself ? Question.ClosesToItself : Question.ClosesToAnother, window, withinMinutes);

    /// <summary>From the end of an operation to the minute at which what it left is dry on every piece.</summary>
    public Func<int, int> DryingOff(Prep.OperationWait wait)
    {
        var asked = new Asked("", 1, Question.DriesOff, (int)wait.Kind, (int)Math.Ceiling(wait.Time.TotalMinutes));
        return Once(moments, asked, () => new Remembered(end => DriesOff(wait, end)).At);
    }

    /// <summary>The last start up to a minute that follows on a permitted one without a break; the start itself where it is a fact that no rule permits.</summary>
    public int LastStart(CoatTask coat, int work, int start, int until)
    {
        var permitted = Starts(coat);
        return permitted.First(start, work) == start ? permitted.Last(start, work, until) : start;
    }

    /// <summary>When every piece has reached a stage.</summary>
    public int Reaches(CoatTask coat, FilmStage stage, int end) => Reaches(coat, Stage(stage), end);

    /// <summary>When every piece has reached service.</summary>
    public int ReachesService(CoatTask coat, int end) => Reaches(coat, DryingStage.Service, end);

    /// <summary>When a wait that is told at the label's conditions is over on every piece, at the pace of the film.</summary>
    public int Outwaits(CoatTask film, Duration wait, int end) =>
        Once(waits, (film.Label.Key, wait), () => DryingGoals.Wait(metals, film.Label, wait)).Last(end, Factor(film)) ?? Never;

    /// <summary>When a window opens on every piece.</summary>
    public int Opens(CoatTask film, RecoatGap gap, int window, int end) =>
        Window(film, gap, window).Opens.Last(end, Factor(film)) ?? Never;

    /// <summary>When a window closes on the first piece.</summary>
    public int Closes(CoatTask film, RecoatGap gap, int window, int start) =>
        Window(film, gap, window).Closes?.First(start) ?? Never;

    /// <summary>When the wait after an operation is over on every piece.</summary>
    public int DriesOff(Prep.OperationWait wait, int end) => wait.Kind switch
    {
        Prep.WaitKind.WashDry => metals.Max(metal => WashDrying.Dries(metal, end, wait.Time) ?? Never),
        Prep.WaitKind.SolventFlash => metals.Max(metal => WipeFlash.Reaches(metal, end, climate.Figures) ?? Never),
        _ => end + (int)Math.Ceiling(wait.Time.TotalMinutes),
    };

    /// <summary>Air, dew point and the coldest piece at a minute.</summary>
    public Conditions At(int minute)
    {
        var coldest = metals[0];
        foreach (var metal in metals)
            coldest = metal.CelsiusAt(minute) < coldest.CelsiusAt(minute) ? metal : coldest;
        return coldest.At(minute);
    }

    /// <summary>Why a coat may not start at a minute, in words.</summary>
    public string WhyNot(CoatTask coat, int work, int minute, Clock clock, QuantityFormat format) =>
        Starts(coat).WhyNot(Math.Max(0, minute), work) is { } hindrance
            ? HindranceWords.Of(hindrance, clock, format)
            : "Waits for air and metal inside the label's limits.";

    private int Reaches(CoatTask coat, DryingStage stage, int end) =>
        Once(stages, (coat.Label.Key, stage), () => DryingGoals.Stage(metals, coat.Label, stage)).Last(end, Factor(coat)) ?? Never;

    private (DryingGoals Opens, DryingGoals? Closes) Window(CoatTask film, RecoatGap gap, int window) => Once(windows, (film.Label.Key, gap, window), () => (
        DryingGoals.Opening(metals, film.Label, gap, window),
        Windows.Of(film.Label, gap)[window].To is null ? null : DryingGoals.Closing(metals, film.Label, gap, window)));

    // From several threads at once: two searches may look at one place.
    private static TValue Once<TKey, TValue>(ConcurrentDictionary<TKey, TValue> known, TKey key, Func<TValue> make)
        where TKey : notnull => known.GetOrAdd(key, static (_, make) => make(), make);

    // Asked at every link that is drawn, and mostly known.
    private Func<int, int> Known(CoatTask coat, Question question, int of, int minutes)
    {
        var asked = new Asked(coat.Label.Key, coat.FilmShare, question, of, minutes);
        return moments.TryGetValue(asked, out var known) ? known : moments.GetOrAdd(asked, new Remembered(Moment(coat, question, of, minutes)).At);
    }

    private Func<int, int> Moment(CoatTask coat, Question question, int of, int minutes) => question switch
    {
        Question.Reaches => end => Reaches(coat, (FilmStage)of, end) + minutes,
        Question.ReachesAfter => end => Math.Max(Outwaits(coat, Duration.FromMinutes(minutes), end), Reaches(coat, (FilmStage)of, end)),
        Question.OpensToItself => end => Math.Max(end + minutes, Opens(coat, RecoatGap.Itself, of, end)),
        Question.OpensToAnother => end => Math.Max(end + minutes, Opens(coat, RecoatGap.Another, of, end)),
        Question.ClosesToItself => start => Math.Min(start + minutes, Closes(coat, RecoatGap.Itself, of, start)),
        Question.ClosesToAnother => start => Math.Min(start + minutes, Closes(coat, RecoatGap.Another, of, start)),
        _ => throw new ArgumentOutOfRangeException(nameof(question), question, "A question about a coat."),
    };

    private Func<int, int?> RememberedFirstStarts(CoatTask coat, int work) =>
        Once(firstStarts, (coat.Label.Key, work), () => new RememberedStarts(from => Starts(coat).First(from, work)).From);

    private double Factor(CoatTask coat) => slowness * (coat.FilmShare > 1 ? Drying.ThickFilmFactor(coat.FilmShare, climate.Figures) : 1);

    private CoatStarts Starts(CoatTask coat) => Once(starts, coat.Label.Key, () => CoatStarts.Of(climate, coat.Label, metals));

    private static DryingStage Stage(FilmStage stage) => stage switch
    {
        FilmStage.Dust => DryingStage.Dust,
        FilmStage.Touch => DryingStage.Touch,
        FilmStage.Tape => DryingStage.Tape,
        FilmStage.Handle => DryingStage.Handle,
        FilmStage.Through => DryingStage.Through,
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "A stage of drying."),
    };

    private readonly record struct Asked(string Label, double Share, Question Question, int Of, int Minutes);

    // What is asked of a minute; for each of them a stage, a window or a kind of wait, and minutes, tell one function from another.
    private enum Question
    {
        Reaches,
        ReachesAfter,
        OpensToItself,
        OpensToAnother,
        ClosesToItself,
        ClosesToAnother,
        DriesOff,
    }
}
