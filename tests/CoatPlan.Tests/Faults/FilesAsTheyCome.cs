using System.Text;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;

namespace CoatPlan.Tests.Faults;

/// <summary>Files of every kind that a person may hand over: read, kept as they are outside the edit, or refused with a line and a column.</summary>
public sealed class FilesAsTheyCome : IDisposable
{
    private readonly TempFolder folder = new();

    [Theory]
    [InlineData(false, "\n")]
    [InlineData(true, "\n")]
    [InlineData(false, "\r\n")]
    [InlineData(true, "\r\n")]
    public void A_byte_order_mark_and_line_ends_are_kept(bool mark, string lineEnd)
    {
        var path = folder.File("a.job.yaml");
        byte[] before = [.. mark ? Encoding.UTF8.Preamble.ToArray() : [], .. Encoding.UTF8.GetBytes(Desks.SmallJob.ReplaceLineEndings(lineEnd))];
        File.WriteAllBytes(path, before);

        var run = CommandRun.Of("done", path, "photograph", "--at", "16:10");

        run.Errors.ShouldBeEmpty();
        var after = File.ReadAllBytes(path);
        after.Length.ShouldBeGreaterThan(before.Length);
        after.AsSpan().StartsWith(Encoding.UTF8.Preamble).ShouldBe(mark);
        var text = Encoding.UTF8.GetString(after);
        text.Replace(lineEnd, "", StringComparison.Ordinal).ShouldNotContain("\n");
        foreach (var line in Encoding.UTF8.GetString(before).Split(lineEnd))
            text.ShouldContain(line);
    }

    [Fact]
    public void A_link_stays_a_link_and_what_it_names_is_replaced()
    {
        Directory.CreateDirectory(folder.File("real"));
        var real = folder.File("real/b.job.yaml", Desks.SmallJob);
        File.CreateSymbolicLink(folder.File("middle.job.yaml"), real);
        File.CreateSymbolicLink(folder.File("a.job.yaml"), "middle.job.yaml");

        CommandRun.Of("done", folder.File("a.job.yaml"), "photograph", "--at", "16:10").Errors.ShouldBeEmpty();

        new FileInfo(folder.File("a.job.yaml")).LinkTarget.ShouldBe("middle.job.yaml");
        File.ReadAllText(real).ShouldContain("photograph");
        Directory.GetFileSystemEntries(folder.File("real")).ShouldBe([real]);
    }

    [Theory]
    [InlineData("utf-16", "1:1", "UTF-16")]
    [InlineData("utf-16BE", "1:1", "UTF-16")]
    [InlineData("utf-32", "1:1", "")]
    [InlineData("iso-8859-1", "9:22", "UTF-8")]
    public void Another_encoding_is_refused_where_it_shows(string encoding, string where, string said)
    {
        var path = folder.File("a.job.yaml");
        var other = Encoding.GetEncoding(encoding);
        File.WriteAllBytes(path, [.. other.Preamble, .. other.GetBytes(Desks.SmallJob)]);

        var run = CommandRun.Of("check", path);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldStartWith($"{path}:{where}: ");
        run.Errors.ShouldContain(said);
    }

    [Fact]
    public void A_file_of_a_hundred_megabytes_is_refused_with_little_memory()
    {
        var path = folder.File("a.job.yaml", Desks.SmallJob);
        using (var file = new FileStream(path, FileMode.Append))
            file.SetLength(100 * 1024 * 1024);
        var before = GC.GetAllocatedBytesForCurrentThread();

        var run = CommandRun.Of("check", path);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldStartWith($"{path}:1:1: ");
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(20 * 1024 * 1024);
    }

    [Theory]
    [InlineData("[", 100_000)]
    [InlineData("{a: ", 100_000)]
    [InlineData("- ", 100_000)]
    [InlineData("? ", 100_000)]
    [InlineData("\"", 100_001)]
    [InlineData("&a [", 50_000)]
    [InlineData("!a ", 50_000)]
    [InlineData("a: |\n ", 50_000)]
    [InlineData("- - - - - - - -\n", 30_000)]
    public void Nothing_is_too_deep_to_be_refused(string open, int times)
    {
        var path = folder.File("a.job.yaml", "notes: " + string.Concat(Enumerable.Repeat(open, times)));

        var run = CommandRun.Of("check", path);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.Count.ShouldBeInRange(1, 1000);
        run.ErrorLines.ShouldAllBe(line => line.StartsWith(path + ":", StringComparison.Ordinal));
    }

    [Fact]
    public void Aliases_that_multiply_are_refused_before_they_are_counted_out()
    {
        var bomb = new StringBuilder("coatplan: 1\nnotes: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (var i = 1; i < 12; i++)
            bomb.Append(System.Globalization.CultureInfo.InvariantCulture, $"n{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n");
        var path = folder.File("a.job.yaml", bomb.ToString());
        var before = GC.GetAllocatedBytesForCurrentThread();

        var run = CommandRun.Of("check", path);

        run.ExitCode.ShouldBe(2);
        run.ErrorLines.ShouldAllBe(line => line.StartsWith(path + ":", StringComparison.Ordinal));
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(50 * 1024 * 1024);
    }

    public void Dispose() => folder.Dispose();
}
