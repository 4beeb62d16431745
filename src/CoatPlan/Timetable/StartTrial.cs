using CoatPlan.Scheduling;

namespace CoatPlan.Timetable;

/// <summary>What a job comes to when it starts at one moment.</summary>
/// <param name="FinishMinute">End of the last step, minutes from the start.</param>
/// <param name="WaitMinutes">Minutes of working hours, from the start to the finish, in which no step runs.</param>
/// <param name="LeastMarginKelvin">The least distance of the metal above the lowest that the label's distance from the dew point allows, from the start of each coat until it can be touched; null where no coat is still to be put on.</param>
internal sealed record StartTrial(int FinishMinute, int WaitMinutes, double? LeastMarginKelvin)
{
    /// <summary>The trial of an arranged job; null where the whole of it could not be placed.</summary>
    public static StartTrial? Of(Settled settled)
    {
        if (settled.Arranged.Stopped is not null)
            return null;

        var (place, drawn) = (settled.Place, settled.Arranged.Drawn);
        var steps = drawn.Nodes
            .Select((node, index) => (Node: node, At: settled.Arranged.Outcome.Placed[index]))
            .Where(step => !step.Node.IsMilestone && step.At is not null)
            .Select(step => (step.Node, At: step.At!.Value))
            .ToArray();
        if (steps.Length == 0)
            return null;

        var from = Math.Max(0, place.Done.Release);
        var finish = steps.Max(step => step.At.End);
        return new StartTrial(
            finish,
            place.Hours.OpenMinutes(from, finish) - BusyMinutes(steps.Select(step => step.At), from, place.Hours),
            LeastMargin(steps, place));
    }

    private static int BusyMinutes(IEnumerable<Placement> steps, int from, OpenHours hours)
    {
        var (busy, until) = (0, from);
        foreach (var at in steps.OrderBy(at => at.Start))
        {
            busy += hours.OpenMinutes(Math.Max(at.Start, until), at.End);
            until = Math.Max(until, at.End);
        }

        return busy;
    }

    private static double? LeastMargin((WorkNode Node, Placement At)[] steps, Workplace place)
    {
        double? least = null;
        foreach (var (node, at) in steps.Where(step => step.Node is { Coat: not null, Activity.Fixed: null }))
        {
            var coat = node.Coat!;
            var air = place.AirAround.Of(coat.Surfaces);
            var touch = Math.Min(Clock.Horizon, air.Reaches(coat, FilmStage.Touch, at.End));
            for (var minute = at.Start; minute <= touch; minute++)
            {
                var now = air.At(minute);
                var margin = now.Surface.DegreesCelsius - now.DewPoint.DegreesCelsius - coat.Label.Limits.AboveDew.Kelvins;
                least = least < margin ? least : margin;
            }
        }

        return least;
    }
}
