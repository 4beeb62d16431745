namespace CoatPlan.Timetable;

/// <summary>Stages as a person would say them.</summary>
internal static class StageWords
{
    /// <summary>A clause that can stand before "25 min after coat 1".</summary>
    public static string Of(FilmStage stage) => stage switch
    {
        FilmStage.Done => "finished",
        FilmStage.Dust => "dust-free",
        FilmStage.Touch => "dry to touch",
        FilmStage.Tape => "dry enough to tape",
        FilmStage.Recoat => "the recoat window opens",
        FilmStage.Handle => "dry to handle",
        FilmStage.Through => "dry through",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "A stage of a film."),
    };
}
