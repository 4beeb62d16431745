namespace CoatPlan.Scheduling;

/// <summary>Small changes to what a schedule is generated from: an activity or a chain moved, those alike gathered, another window tried.</summary>
internal sealed class Neighbourhood
{
    private readonly Frame frame;
    private readonly Draws draws;
    private readonly int[] open;
    private readonly int[] choices;
    private readonly int[] groups;
    private readonly int[][] chains;
    private readonly int[] sequence;
    private readonly int[] rest;
    private readonly int[] moved;
    private readonly bool[] isMoved;

    public Neighbourhood(Frame frame, Draws draws, int[] groups)
    {
        this.frame = frame;
        this.draws = draws;
        this.groups = groups;
        chains = Chains.Of(frame);
        open = [.. Enumerable.Range(0, frame.Count).Where(i => !frame.IsFixed[i])];
        choices = [.. Enumerable.Range(0, frame.Links.Length).Where(l => frame.Links[l].Windows.Length > 1 && !frame.IsFixed[frame.Links[l].To])];
        sequence = new int[frame.Count];
        rest = new int[frame.Count];
        moved = new int[frame.Count];
        isMoved = new bool[frame.Count];
    }

    /// <summary>One that differs a little.</summary>
    public Candidate Of(Candidate candidate)
    {
        var windows = candidate.Windows;
        if (choices.Length > 0 && draws.Below(3) == 0)
        {
            windows = OtherWindow(windows);
            if (draws.Below(2) == 0)
            {
                return candidate with { Windows = windows };
            }
        }

        for (var i = 0; i < sequence.Length; i++)
        {
            sequence[candidate.Ranks[i]] = i;
        }

        if (chains.Length > 1 && draws.Below(2) == 0)
        {
            MoveChain();
        }
        else
        {
            if (draws.Below(4) == 0)
            {
                GatherAlike();
            }

            for (var moves = 1 + draws.Below(3); moves > 0; moves--)
            {
                var at = AnyPlace();
                isMoved[sequence[at]] = true;
                MoveTo(at + Reach());
            }
        }

        var ranks = new int[sequence.Length];
        for (var i = 0; i < ranks.Length; i++)
        {
            ranks[sequence[i]] = i;
        }

        return new Candidate(ranks, windows);
    }

    /// <summary>An order at random.</summary>
    public int[] Shuffled()
    {
        var ranks = new int[frame.Count];
        for (var i = 0; i < ranks.Length; i++)
        {
            var j = draws.Below(i + 1);
            ranks[i] = ranks[j];
            ranks[j] = i;
        }

        return ranks;
    }

    /// <summary>Windows of which about every third is one at random.</summary>
    public int[] AnyWindows(int[] windows)
    {
        int[] any = [.. windows];
        foreach (var link in choices)
        {
            if (draws.Below(3) == 0)
            {
                any[link] = draws.Below(frame.Links[link].Windows.Length);
            }
        }

        return any;
    }

    private int[] OtherWindow(int[] windows)
    {
        int[] other = [.. windows];
        var link = choices[draws.Below(choices.Length)];
        var lowest = frame.MaySpareLastResort(frame.Links[link]) ? Candidate.NoLastResort : Candidate.AnyWindow;
        other[link] = draws.Below(frame.Links[link].Windows.Length - lowest) + lowest;
        return other;
    }

    // The place of an activity that is no fact: to move one of those changes nothing.
    private int AnyPlace() =>
        open.Length is 0 || open.Length == sequence.Length ? draws.Below(sequence.Length) : Array.IndexOf(sequence, open[draws.Below(open.Length)]);

    private int Reach()
    {
        var far = 1 + draws.Below(Math.Max(1, sequence.Length / 2));
        return draws.Below(2) == 0 ? -far : far;
    }

    // Brings all or the end of a chain before or after something else.
    private void MoveChain()
    {
        var chain = chains[draws.Below(chains.Length)];
        var skipped = draws.Below(2) == 0 ? 0 : draws.Below(chain.Length);
        foreach (var i in chain)
        {
            isMoved[i] = true;
        }

        var first = -1;
        for (var at = 0; first < 0; at++)
        {
            if (!isMoved[sequence[at]])
            {
                continue;
            }

            if (skipped-- == 0)
            {
                first = at;
            }
            else
            {
                isMoved[sequence[at]] = false;
            }
        }

        MoveTo(first + Reach());
    }

    // Takes out what is marked, and puts it in again, in its own order, so that it begins at a place.
    private void MoveTo(int place)
    {
        var (kept, taken) = (0, 0);
        foreach (var i in sequence)
        {
            if (isMoved[i])
            {
                isMoved[i] = false;
                moved[taken++] = i;
            }
            else
            {
                rest[kept++] = i;
            }
        }

        place = Math.Clamp(place, 0, kept);
        Array.Copy(rest, sequence, place);
        Array.Copy(moved, 0, sequence, place, taken);
        Array.Copy(rest, place, sequence, place + taken, kept - place);
    }

    // Brings an activity's like from some way around it next to it.
    private void GatherAlike()
    {
        var at = AnyPlace();
        var group = groups[sequence[at]];
        if (group < 0)
        {
            return;
        }

        var reach = 1 + draws.Below(sequence.Length);
        var from = Math.Max(0, at - reach);
        var until = Math.Min(sequence.Length, at + reach + 1);
        var place = at;
        for (var i = from; i < until; i++)
        {
            isMoved[sequence[i]] = groups[sequence[i]] == group;
            place -= i < at && isMoved[sequence[i]] ? 1 : 0;
        }

        MoveTo(place);
    }
}
