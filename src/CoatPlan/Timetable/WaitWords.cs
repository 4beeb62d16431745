using System.Globalization;
using CoatPlan.Quantities;
using CoatPlan.Scheduling;
using NodaTime.Text;

namespace CoatPlan.Timetable;

/// <summary>What a step waits for, and why a job cannot be placed, in words.</summary>
internal static class WaitWords
{
    private static readonly LocalDateTimePattern DayAndTime = LocalDateTimePattern.CreateWithInvariantCulture("ddd d MMM HH:mm");

    /// <summary>What may be done about a late finish, of which nothing was tried.</summary>
    public const string MayHelp = "A finish-by no earlier than that would be met. More hours, another person or warmer air may bring the finish in, or change nothing.";

    /// <summary>A moment, such as "Sat 15 May 08:10".</summary>
    public static string Moment(LocalDateTime time) => DayAndTime.Format(time);

    /// <summary>Why a step starts no earlier.</summary>
    public static string Of(Arranged arranged, int index, Reason? reason, Workplace place)
    {
        var (drawn, outcome) = (arranged.Drawn, arranged.Outcome);
        var node = drawn.Nodes[index];
        if (node.Activity.Fixed is not null)
            return "Done already.";
        if (node.Operation?.Word == "unmask" && OfOverdueTape(arranged, index, place) is { } overdue)
            return overdue;
        if (outcome.Schedule is null || reason is null)
            return "Placed as early as the steps before it allow.";

        return reason.Kind switch
        {
            ReasonKind.Release => "Starts as soon as the job does.",
            ReasonKind.LeastWait or ReasonKind.MostWait when reason.Link is { } link => OfLink(node.Id, arranged, link, place),
            ReasonKind.Resource or ReasonKind.Capacity => OfResource(reason, drawn),
            ReasonKind.Hours => OfHours(node, outcome.Placed[index]!.Value, place),
            ReasonKind.StartRule when node.Coat is { } coat => place.AirAround.Of(coat.Surfaces).WhyNot(coat, node.Activity.Work, outcome.Placed[index]!.Value.Start - 1, place.Clock, place.Format),
            ReasonKind.StartRule => "Waits until the rain is over, so that what is wiped stays dry.",
            ReasonKind.Avoidance => OfAvoidance(node, reason.Other, drawn),
            _ => "Placed where its own windows and those of the steps after it can be kept.",
        };
    }

    // Only tape that was on too long before anything could be planned stays on past its limit.
    private static string? OfOverdueTape(Arranged arranged, int unmask, Workplace place)
    {
        var (drawn, placed) = (arranged.Drawn, arranged.Outcome.Placed);
        int? on = null;
        foreach (var link in drawn.LinksTo(unmask))
        {
            if (drawn.Nodes[drawn.Leader(link)].Operation?.Word is "mask" or "remask" && placed[drawn.Leader(link)] is { } at)
                on = Math.Max(on ?? at.Start, at.Start);
        }

        var minutes = placed[unmask]!.Value.Start - on;
        return minutes > place.TapeLimitMinutes
            ? $"The tape has been on for {Words(minutes.Value)} by then, past its limit of {Words(place.TapeLimitMinutes)}: pull it slowly and soon, and mask anew for any coat that follows."
            : null;
    }

    /// <summary>Why a job cannot be placed, told of the step at which it came to a stop.</summary>
    public static string Of(Blockage blockage, WorkNetwork drawn, Workplace place)
    {
        var node = drawn.Nodes[drawn.IndexOf(blockage.Activity)];
        var title = Named(node);
        var work = node.Activity.Work;
        return blockage.Reason.Kind switch
        {
            ReasonKind.Hours when place.Hours.Openings.IsEmpty =>
                "The crew has no working hours in the 60 days from the start: add hours under crew, hours.",
            ReasonKind.Hours when work > place.LongestOpening =>
                string.Create(CultureInfo.InvariantCulture, $"{title} takes {work} min in one go, and the longest working span leaves {place.LongestOpening} min: lengthen a span, or list its pieces as surfaces of their own."),
            ReasonKind.StartRule when node.Coat is { } coat =>
                $"{title} finds no time to start: {place.AirAround.Of(coat.Surfaces).WhyNot(coat, work, Math.Max(0, blockage.Earliest), place.Clock, place.Format)} Start later, hold the place warmer, or choose a product with wider limits.",
            ReasonKind.Capacity => $"{title} asks for more of the {blockage.Reason.Resource} than there is: raise it in the job, or list fewer pieces together.",
            ReasonKind.MostWait => $"{title} cannot start before the window of the step before it closes: longer working spans, smaller surfaces or a product with a wider window would open it.",
            ReasonKind.Horizon => $"{title} does not fit into the 60 days from the start: more hours or more people may bring it in.",
            _ => $"{title} finds no time that meets its windows, working hours and air together within 60 days from the start.",
        };
    }

    /// <summary>Why a finish is later than was asked.</summary>
    public static string Late(LocalDateTime finish, LocalDateTime asked)
    {
        var late = Period.Between(asked, finish, PeriodUnits.Minutes).Minutes;
        return $"The earliest finish found is {Moment(finish)}, {Words((int)late)} after the {Moment(asked)} asked for (finish-by). {MayHelp}";
    }

    /// <summary>The window of a link that is in use.</summary>
    public static Window InUse(Arranged arranged, int link) =>
        arranged.Drawn.Links[link].Link.Windows[Math.Max(0, arranged.Outcome.Schedule?.WindowInUse[link] ?? 0)];

    /// <summary>What a link makes a step wait for, or keeps it close to.</summary>
    public static string OfLink(string id, Arranged arranged, int index, Workplace place)
    {
        var (drawn, link) = (arranged.Drawn, arranged.Drawn.Links[index]);
        var leader = drawn.Leader(index);
        var from = drawn.Nodes[leader];
        if (from.IsMilestone)
            return OfMilestone(leader, arranged);
        if (link.Link.From == id)
            return KeptClose(drawn.Nodes[drawn.Follower(index)], link);

        var at = arranged.Outcome.Placed[leader]!.Value;
        var least = InUse(arranged, index).Least.After(at);
        var wait = least - at.End;
        if (wait <= 0)
            return $"Follows {Named(from)}.";

        var until = Moment(place.Clock.At(least));
        return link.Stage == FilmStage.Done
            ? $"Not before {until}: {Words(wait)} after {Named(from)}, for {from.Operation?.Wait.Why ?? "what it left to dry"}."
            : $"Not before {until}: {StageWords.Of(link.Stage)} {Words(wait)} after {Named(from)} (label {Words((int)Math.Ceiling(link.LabelMinutes ?? 0))}).";
    }

    // The step that a point waits for is the last of those that lead to it.
    private static string OfMilestone(int point, Arranged arranged)
    {
        var drawn = arranged.Drawn;
        int? last = null;
        foreach (var link in drawn.LinksTo(point))
        {
            var leader = drawn.Leader(link);
            if (!drawn.Nodes[leader].IsMilestone && (last is not { } known || (EndOf(leader), known).CompareTo((EndOf(known), leader)) > 0))
                last = leader;
        }

        return last is { } node
            ? $"Waits until this kind of work is done on every surface: {Named(drawn.Nodes[node])} is the last of it."
            : "Waits until this kind of work is done on every surface.";

        int EndOf(int index) => arranged.Outcome.Placed[index]?.End ?? int.MinValue;
    }

    private static string OfHours(WorkNode node, Placement at, Workplace place)
    {
        var before = place.Hours.Openings.LastOrDefault(opening => opening.Closes <= at.Start);
        if (before.Closes <= before.Opens)
            return "Starts as soon as the working hours do.";

        return before.Closes - before.Opens >= node.Activity.Work
            ? $"Waits for the working hours from {Moment(place.Clock.At(at.Start))}: those before, until {Moment(place.Clock.At(before.Closes))}, leave no room for its {Words(node.Activity.Work)}."
            : $"Waits for working hours that leave room for its {Words(node.Activity.Work)}.";
    }

    private static string OfAvoidance(WorkNode node, string? other, WorkNetwork drawn)
    {
        var there = drawn.Find(other);
        return (node.Operation, there?.Coat) switch
        {
            ({ HotWork: true, MakesDust: false }, not null) => $"No flame or spark while vapour of {TitleOf(other, drawn)} is in the air.",
            ({ MakesDust: true }, not null) => $"Nothing may make dust while {TitleOf(other, drawn)} takes dust.",
            (null, not null) => $"Nothing else is sprayed while {TitleOf(other, drawn)} takes dust.",
            (null, null) when there?.Operation is { MakesDust: false } => $"Nothing is sprayed while {TitleOf(other, drawn)} leaves something hot or sparking in the same air.",
            (null, null) => $"Nothing is sprayed while {TitleOf(other, drawn)} makes dust.",
            ({ HotWork: true }, null) => $"No flame or spark while {TitleOf(other, drawn)} leaves solvent open.",
            _ => $"Waits until {TitleOf(other, drawn)} leaves neither wet film, dust nor vapour in the way.",
        };
    }

    // The step itself could be earlier, but then a later one would miss the window that counts from it.
    private static string KeptClose(WorkNode to, WorkLink link) =>
        link.Tape ? $"Kept close to {Named(to)}, so that the tape stays on no longer than its limit." : $"Kept close to {Named(to)}, which must follow in time.";

    private static string OfResource(Reason reason, WorkNetwork drawn)
    {
        var busy = reason.Other is null ? "" : $" ({TitleOf(reason.Other, drawn)})";
        return reason.Resource switch
        {
            SharedSpace.SpraySpots => $"Waits for a free spray spot{busy}.",
            SharedSpace.Rack => $"Waits for room on the rack{busy}.",
            _ => $"Waits for a free pair of hands{busy}.",
        };
    }

    private static string TitleOf(string? id, WorkNetwork drawn) =>
        drawn.Find(id) is { } node ? Named(node) : "another step";

    private static string Words(int minutes) => QuantityFormat.Duration(Duration.FromMinutes(minutes));

    /// <summary>A step by its title and batch.</summary>
    public static string Named(WorkNode node) =>
        node.IsMilestone ? "the work before it"
        : node.Batch is { } batch ? $"“{Titles.Of(node)}” ({batch.Name})"
        : $"“{Titles.Of(node)}”";
}
