using System.Globalization;

namespace CoatPlan.Tests.Docs;

/// <summary>A sum as written on paper: + − × ÷ / ^ ( ) exp ln sqrt π, the usual precedence.</summary>
internal sealed class Reckoning
{
    private readonly string text;
    private int at;

    public Reckoning(string sum)
    {
        text = sum.Replace(" ", "", StringComparison.Ordinal).Replace(",", "", StringComparison.Ordinal).Replace('−', '-').Replace('÷', '/').Replace('×', '*').Replace('·', '*').Replace("²", "^2", StringComparison.Ordinal);
        Value = Added();
        if (at != text.Length)
            throw new FormatException($"'{sum}' is no sum from '{text[at..]}' on");
    }

    public double Value { get; }

    private double Added()
    {
        var left = Multiplied();
        while (true)
        {
            if (Take("+"))
                left += Multiplied();
            else if (Take("-"))
                left -= Multiplied();
            else
                return left;
        }
    }

    private double Multiplied()
    {
        var left = Raised();
        while (true)
        {
            if (Take("*"))
                left *= Raised();
            else if (Take("/"))
                left /= Raised();
            else
                return left;
        }
    }

    private double Raised()
    {
        var left = Single();
        return Take("^") ? Math.Pow(left, Raised()) : left;
    }

    private double Single()
    {
        if (Take("-"))
            return -Single();
        if (Take("π"))
            return Math.PI;
        if (Take("exp("))
            return Math.Exp(Inside());
        if (Take("ln("))
            return Math.Log(Inside());
        if (Take("sqrt("))
            return Math.Sqrt(Inside());
        if (Take("("))
            return Inside();
        var from = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.'))
            at++;
        return double.Parse(text[from..at], CultureInfo.InvariantCulture);
    }

    private double Inside()
    {
        var value = Added();
        return Take(")") ? value : throw new FormatException($"'{text}' lacks a bracket");
    }

    private bool Take(string mark)
    {
        var here = string.CompareOrdinal(text, at, mark, 0, mark.Length) == 0;
        at += here ? mark.Length : 0;
        return here;
    }
}
