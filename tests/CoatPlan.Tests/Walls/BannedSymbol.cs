namespace CoatPlan.Tests.Walls;

/// <summary>A line of the list of banned calls: what is banned, and what to use instead.</summary>
internal sealed record BannedSymbol(char Kind, string Type, string Member, int Parameters, string Instead)
{
    public static ImmutableArray<BannedSymbol> Read(string text) =>
        [.. text.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0 && !line.StartsWith('#')).Select(ReadLine)];

    /// <summary>Whether a use is of what is banned.</summary>
    public bool Bans(TypeUse use) => use.To == Type && (Kind, Member) switch
    {
        // Iterators that the compiler makes ask for the thread they were made on.
        ('T', _) => use.Member != "get_CurrentManagedThreadId" && !(use.To == "System.Environment" && use.Member.Length == 0),
        ('P', _) => use.Member == "get_" + Member || use.Member == "set_" + Member,
        ('M', "#ctor") => use.Member == ".ctor" && use.Parameters == Parameters,
        ('M', _) => use.Member == Member && use.Parameters == Parameters,
        _ => use.Member == Member,
    };

    private static BannedSymbol ReadLine(string line)
    {
        int mark = line.IndexOf(';', StringComparison.Ordinal);
        string symbol = mark < 0 ? line : line[..mark], instead = mark < 0 ? "" : line[(mark + 1)..].Trim();
        string full = symbol[2..];
        int open = full.IndexOf('(', StringComparison.Ordinal);
        int parameters = open < 0 ? 0 : full[open..].Count(letter => letter == ',') + 1;
        string path = open < 0 ? full : full[..open];
        int dot = path.LastIndexOf('.');
        return symbol[0] == 'T' ? new BannedSymbol('T', path, "", -1, instead) : new BannedSymbol(symbol[0], path[..dot], path[(dot + 1)..], parameters, instead);
    }
}
