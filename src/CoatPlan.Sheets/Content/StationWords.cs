namespace CoatPlan.Sheets.Content;

/// <summary>The stations of a class in words.</summary>
internal static class StationWords
{
    /// <summary>Words with the stations that they hold for, in order; the words alone where the job has one crew.</summary>
    public static string After(string words, IEnumerable<int?> stations)
    {
        var named = Of(stations);
        return named.Length == 0 ? words : $"{words}: {named}";
    }

    /// <summary>Such as "station 2" or "stations 1 to 3 and 5"; empty where none is meant.</summary>
    public static string Of(IEnumerable<int?> stations)
    {
        var numbers = stations.OfType<int>().Distinct().Order().ToArray();
        return numbers.Length switch
        {
            0 => "",
            1 => $"station {PlanWords.Count(numbers[0])}",
            _ => $"stations {List(numbers)}",
        };
    }

    private static string List(int[] numbers)
    {
        var runs = new List<(int From, int To)>();
        foreach (var number in numbers)
        {
            if (runs.Count > 0 && runs[^1].To == number - 1)
                runs[^1] = (runs[^1].From, number);
            else
                runs.Add((number, number));
        }

        var parts = runs.SelectMany(run => Words(run.From, run.To)).ToArray();
        return parts.Length == 1 ? parts[0] : $"{string.Join(", ", parts[..^1])} and {parts[^1]}";
    }

    private static string[] Words(int from, int to) => (to - from) switch
    {
        0 => [PlanWords.Count(from)],
        1 => [PlanWords.Count(from), PlanWords.Count(to)],
        _ => [$"{PlanWords.Count(from)} to {PlanWords.Count(to)}"],
    };
}
