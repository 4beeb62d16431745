using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using CoatPlan.Sheets.Content;
using CoatPlan.Sheets.Pdf;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Plans;
using UglyToad.PdfPig;

namespace CoatPlan.Tests.Sheets;

public class PdfDocumentTests
{
    [Fact]
    public void The_same_plan_gives_the_same_bytes_whatever_was_written_before()
    {
        foreach (var sheet in SheetSet.Of(SamplePlan.Weekend()))
        {
            var bytes = Write(sheet);
            Write(SafetySheet.Of(SheetSamples.Many(12)));

            Write(sheet).ShouldBe(bytes);
        }
    }

    [Fact]
    public void Other_words_give_the_document_another_name() =>
        Id(Write(WorkSheet.Of(SamplePlan.Weekend()))).ShouldNotBe(Id(Write(WorkSheet.Of(SamplePlan.Weekend() with { Job = "Another bay" }))));

    [Fact]
    public void Every_entry_of_the_cross_reference_table_leads_to_its_object()
    {
        var text = Encoding.Latin1.GetString(Write(WorkSheet.Of(SamplePlan.Weekend())));
        var start = int.Parse(Regex.Match(text, @"startxref\n(\d+)\n%%EOF").Groups[1].Value, CultureInfo.InvariantCulture);
        var entries = Regex.Matches(text[start..], @"^(\d{10}) \d{5} n $", RegexOptions.Multiline).Select(match => int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)).ToArray();

        text[start..].ShouldStartWith($"xref\n0 {entries.Length + 1}\n");
        for (var number = 1; number <= entries.Length; number++)
            text[entries[number - 1]..].ShouldStartWith($"{number} 0 obj");
    }

    [Fact]
    public void Every_compressed_stream_has_its_length_and_its_end()
    {
        var text = Encoding.Latin1.GetString(Write(WorkSheet.Of(SamplePlan.Weekend())));
        var streams = Regex.Matches(text, @"/Length (\d+)/Filter/FlateDecode[^\n]*\nstream\n");

        streams.Count.ShouldBeGreaterThan(2);
        foreach (Match stream in streams)
        {
            var length = int.Parse(stream.Groups[1].Value, CultureInfo.InvariantCulture);
            var from = stream.Index + stream.Length;
            text[(from + length)..].ShouldStartWith("\nendstream\nendobj");
            var bytes = Encoding.Latin1.GetBytes(text[from..(from + length)]);
            using var zlib = new ZLibStream(new MemoryStream(bytes), CompressionMode.Decompress);
            using var plain = new MemoryStream();
            zlib.CopyTo(plain);
            Adler(plain.ToArray()).ShouldBe(bytes[^4..]);
        }
    }

    [Fact]
    public void The_document_says_what_it_is_who_made_it_and_in_which_language()
    {
        foreach (var sheet in SheetSet.Of(SheetSamples.Van()))
        {
            var bytes = Write(sheet);
            using var document = PdfDocument.Open(bytes);

            document.Information.Title.ShouldBe($"{sheet.Title}: {sheet.Job}");
            document.Information.Author.ShouldBe("CoatPlan");
            document.Information.Creator.ShouldBe("CoatPlan");
            document.TryGetBookmarks(out var bookmarks).ShouldBeTrue(sheet.Name);
            bookmarks.GetNodes().ShouldNotBeEmpty(sheet.Name);
            Encoding.Latin1.GetString(bytes).ShouldContain("/Lang(en-US)");
            foreach (var page in document.GetPages())
            {
                var words = string.Join(' ', page.GetWords().Select(word => word.Text));
                words.ShouldContain($"page {page.Number} of {document.NumberOfPages}");
                words.ShouldContain("label and safety data sheet win over this plan");
            }
        }
    }

    [Theory]
    [InlineData("/ABCDEF+ and uuid:01234567-89ab-cdef-0123-456789abcdef")]
    [InlineData("stream endstream endobj xref trailer startxref %%EOF")]
    [InlineData("<&>\"' (a) \\ [b] /Length 5 /ID[<00><00>]")]
    public void A_name_stays_a_name(string job)
    {
        using var document = PdfDocument.Open(Write(SafetySheet.Of(SamplePlan.Weekend() with { Job = job })));

        document.Information.Title.ShouldBe($"Masking & safety: {job}");
        string.Join(' ', document.GetPage(1).GetWords().Select(word => word.Text)).ShouldContain(job);
    }

    [Fact]
    public void A_long_name_of_the_job_takes_two_lines_and_says_that_it_goes_on()
    {
        using var document = PdfDocument.Open(Write(WorkSheet.Of(SamplePlan.Weekend() with { Job = string.Join(' ', Enumerable.Repeat("Roadster", 60)) })));

        document.Information.Title!.Split(' ').Length.ShouldBe(61);
        string.Join(' ', document.GetPage(1).GetWords().Select(word => word.Text)).ShouldContain("Roadster…");
    }

    [Fact]
    public void A_strict_reader_finds_nothing_wrong_where_it_is_there()
    {
        Assert.SkipUnless(OtherProgram.IsThere("qpdf"), "qpdf is not here");
        foreach (var sheet in SheetSet.Of(SheetSamples.Many(12)).AddRange(SheetSet.Of(SheetSamples.Class())))
        {
            using var folder = new TempFolder();
            File.WriteAllBytes(Path.Combine(folder.Path, "sheet.pdf"), Write(sheet));

            OtherProgram.Run(folder.Path, "qpdf", "--check", "sheet.pdf").ShouldContain("No syntax or stream encoding errors found");
        }
    }

    private static byte[] Write(Sheet sheet) => PdfSheet.Write(sheet, PaperSize.A4, SamplePlan.At(14, 16, 0));

    private static string Id(byte[] bytes) => Regex.Match(Encoding.Latin1.GetString(bytes), "/ID\\[[^]]*]").Value;

    // Source: RFC 1950, section 8.2.
    private static byte[] Adler(byte[] plain)
    {
        var (a, b) = (1u, 0u);
        foreach (var one in plain)
        {
            a = (a + one) % 65521;
            b = (b + a) % 65521;
        }

        return [(byte)(b >> 8), (byte)b, (byte)(a >> 8), (byte)a];
    }
}
