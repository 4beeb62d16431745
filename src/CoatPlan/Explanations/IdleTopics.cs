namespace CoatPlan.Explanations;

/// <summary>What can be asked of hours without work and of the points where the job can rest.</summary>
internal static class IdleTopics
{
    public static IEnumerable<Topic> Of(Workings workings) =>
    [
        .. workings.Dated.Idle.SelectMany((idle, i) => OfIdle(idle, FormattableString.Invariant($"idle[{i}]"))),
        .. workings.Dated.RestPoints.Select((point, i) => new Topic(
            FormattableString.Invariant($"restPoints[{i}].at"),
            [FormattableString.Invariant($"rest point {i + 1}")],
            () => Told.Sum("a moment at which the whole job can stop for a week", Told.Time(point.At), null, point.Why, "the timetable", null))),
    ];

    private static IEnumerable<Topic> OfIdle(Timetable.IdleStretch idle, string path)
    {
        yield return new Topic(path + ".from", [], () => Told.Sum("when nothing is left to do for the moment", Told.Time(idle.From), null, idle.Why, "the timetable", null));
        yield return new Topic(path + ".to", [], () => Told.Sum("when work goes on", Told.Time(idle.To), null, idle.Why, "the timetable", null));
        yield return new Topic(path + ".people", [], () => Told.Sum(
            "people with nothing to do", Told.Plain(idle.People), idle.People, "people of the station − people busy with steps then", "the timetable", null));
        if (idle.Station is { } station)
            yield return new Topic(path + ".station", [], () => Told.Given("the station", Told.Plain(station), Told.JobFile, station));
    }
}
