using CoatPlan.App.Wording;
using CoatPlan.Jobs;
using CoatPlan.Sheets.Pdf;

namespace CoatPlan.App.Desk;

/// <content>The sheets.</content>
internal sealed partial class JobDesk
{
    private void DoAtSheets(Word word)
    {
        switch (word)
        {
            case Word.Left:
                (SheetAt, ReadFrom) = (RowChoice.Inside(SheetAt - 1, Sheets.Length), 0);
                break;
            case Word.Right:
                (SheetAt, ReadFrom) = (RowChoice.Inside(SheetAt + 1, Sheets.Length), 0);
                break;
            case Word.WriteSheets or Word.Enter:
                AskForFolder();
                break;
            default:
                ReadOn(word);
                break;
        }
    }

    private void AskForFolder()
    {
        if (Plan is not { } plan)
        {
            Message = "no plan to write sheets of";
            return;
        }

        Typing = new LineEdit
        {
            Asks = "Folder to write the sheets into",
            InCell = false,
            Typed = "sheets",
            Take = typed => WriteSheets(plan, typed.Trim()),
        };
    }

    private string? WriteSheets(Plan plan, string folder)
    {
        if (folder.Length == 0)
            return "a folder needs a name";

        try
        {
            var written = SheetFiles.Write(plan, folder, plan.Units == PrintUnits.Metric ? PaperSize.A4 : PaperSize.Letter);
            var lacking = written.Substitutes.IsEmpty ? "" : $"; the PDFs lack letters of {Written.Count(written.Substitutes.Length, "word", "words")} and say what stands for them";
            Message = $"written: {Written.Count(written.Paths.Length, "file", "files")} in {folder}{lacking}";
            return null;
        }
        catch (Exception exception) when (exception is BadInputException or MachineException)
        {
            return exception.Message;
        }
    }
}
