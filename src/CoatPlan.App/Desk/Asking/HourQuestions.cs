using System.Globalization;
using NodaTime.Text;

namespace CoatPlan.App.Desk.Asking;

/// <summary>Who is free, and when.</summary>
internal static class HourQuestions
{
    private const string Other = "other hours";

    private static readonly LocalDateTimePattern AsWritten = LocalDateTimePattern.Create("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static readonly ImmutableArray<(string Name, string Means, ImmutableArray<(string Days, ImmutableArray<string> Spans)> Hours)> Usual =
    [
        ("a weekend", "Friday 16:00-21:00, Saturday and Sunday 8:00-12:00 and 13:00-18:00", [("Fri", ["16:00-21:00"]), ("Sat-Sun", ["08:00-12:00", "13:00-18:00"])]),
        ("evenings and weekends", "Monday to Friday 17:00-21:00, Saturday and Sunday 8:00-12:00 and 13:00-18:00", [("Mon-Fri", ["17:00-21:00"]), ("Sat-Sun", ["08:00-12:00", "13:00-18:00"])]),
        ("a shop's week", "Monday to Friday 8:00-12:00 and 12:30-16:30", [("Mon-Fri", ["08:00-12:00", "12:30-16:30"])]),
        ("school periods", "Monday to Friday 9:00-9:50 and 10:00-10:50", [("Mon-Fri", ["09:00-09:50", "10:00-10:50"])]),
    ];

    /// <summary>The next question about the hours; null where they are known.</summary>
    /// <param name="draft">What is known.</param>
    /// <param name="start">When work could begin, to begin with.</param>
    public static GuideQuestion? Next(GuideDraft draft, LocalDateTime start) => draft switch
    {
        { Start: null } => GuideQuestion.Line("When can the work begin? Date and time", AsWritten.Format(start), typed => draft with { Start = typed }),
        { Hours: null, TypesHours: false } => GuideQuestion.One("When are you free?",
            [.. Usual.Select(usual => new PickerRow(usual.Name, usual.Means)), new PickerRow(Other, "typed")],
            word => word == Other ? draft with { TypesHours = true } : draft with { Hours = Usual.First(usual => usual.Name == word).Hours })
            with { Chosen = [Usual[draft.Purpose switch { GuidePurpose.Customer => 2, GuidePurpose.Class => 3, _ => 0 }].Name] },
        { Hours: null } => GuideQuestion.Line("Which hours?", "Mon-Fri 17:00-21:00; Sat 08:00-12:00, 13:00-18:00", typed => Typed(typed) is { Length: > 0 } hours ? draft with { Hours = hours } : null)
            with { Expected = "days and spans, such as Mon-Fri 17:00-21:00; Sat 08:00-12:00, 13:00-18:00", Explains = "Days with ; between them, spans of a day with commas. A date works too." },
        { FinishBy: null } => GuideQuestion.Line("When must everything be back together?", "", typed => draft with { FinishBy = typed })
            with { Explains = $"Date and time, such as {AsWritten.Format(start.Date.PlusDays(2).At(new LocalTime(20, 0)))}; nothing where nothing presses." },
        { Stations: null } => GuideQuestion.Line("How many stations are there?", "6", typed => draft with { Stations = typed }) with { Explains = "Each does every piece of the list on its own." },
        { People: null } => GuideQuestion.Line(draft.Purpose == GuidePurpose.Class ? "How many students are at each station?" : "How many people work?", draft.Purpose == GuidePurpose.Class ? "2" : "1", typed => draft with { People = typed }),
        _ => null,
    };

    private static ImmutableArray<(string Days, ImmutableArray<string> Spans)>? Typed(string typed)
    {
        var entries = ImmutableArray.CreateBuilder<(string, ImmutableArray<string>)>();
        foreach (var entry in typed.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (entry.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) is not [var days, var spans])
                return null;

            entries.Add((days.TrimEnd(':'), [.. spans.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)]));
        }

        return entries.ToImmutable();
    }
}
