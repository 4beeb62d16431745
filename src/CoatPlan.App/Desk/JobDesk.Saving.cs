
using CoatPlan.App.Desk.Asking;

namespace CoatPlan.App.Desk;

/// <content>The file, and leaving.</content>
internal sealed partial class JobDesk
{
    /// <summary>Keeps a copy of unsaved work for the case that the program is killed; to be called every few seconds.</summary>
    public void KeepSafe()
    {
        var work = Guiding is { } draft && draftsBefore.Count > 0 ? GuideText.Of(draft) : Text;
        if (work == File.Text || Asking is not null || keptSafe == work)
            return;

        File.KeepSafe(work);
        keptSafe = work;
    }

    private void Save()
    {
        if (File.Path is null)
            AskForName();
        else if (File.ChangedOnDisk())
            AskWhoseTextStays();
        else
            Write();
    }

    private void AskForName() => Typing = new LineEdit
    {
        Asks = "Save as, a file name ending in .job.yaml",
        InCell = false,
        Typed = "my.job.yaml",
        Take = typed =>
        {
            if (typed.Trim().Length == 0)
                return "a file needs a name";
            if (System.IO.File.Exists(typed))
                return $"{typed} exists already; another name, please";

            // A name that cannot be written to is no name of the job: the next save asks again.
            if (File.TrySaveAs(typed.Trim(), Text) is { } whyNot)
                return $"not saved: {whyNot}; another name, please";

            Typing = null;
            Message = $"saved: {File.Path}";
            return null;
        },
    };

    private void AskWhoseTextStays() => Asking = new Question(
        $"{File.Name} was changed by another program since it was read here.",
        [
            new Answer('o', "Overwrite it with what is here", Write),
            new Answer('r', "Read it again and lose what was changed here", TakeFromDisk),
        ]);

    private void Write()
    {
        try
        {
            File.Save(Text);
            Message = $"saved: {File.Path}";
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Message = $"not saved: {exception.Message.ReplaceLineEndings(" ")}";
        }
    }

    private void Reload()
    {
        if (!Unsaved)
        {
            TakeFromDisk();
            return;
        }

        Asking = new Question("Reading the file again undoes what was not saved; undo brings it back.",
            [new Answer('r', "Read the file again", TakeFromDisk)]);
    }

    private void TakeFromDisk()
    {
        try
        {
            TakeUp(File.Reload(), "reading the file again", "read again");
        }
        catch (BadInputException exception)
        {
            Message = exception.Message;
        }
    }

    private void OfferWhatWasLeftBehind()
    {
        if (File.LeftBehind() is not { } left)
            return;

        Asking = new Question($"Work on {File.Name} was left unsaved the last time.",
            [
                new Answer('t', "Take it up again", () =>
                {
                    StopGuide("");
                    TakeUp(left, "taking up unsaved work", "taken up; not saved yet");
                }),
                new Answer('d', "Delete it", File.Forget),
            ]);
    }

    private void Quit()
    {
        if (Guiding is not null)
        {
            AskHowToLeaveGuide();
            return;
        }

        if (!Unsaved)
        {
            Leave();
            return;
        }

        Asking = new Question("There are unsaved changes.",
            [
                new Answer('s', "Save and leave", () =>
                {
                    Save();
                    if (!Unsaved && Asking is null)
                        Leave();
                }),
                new Answer('d', "Discard and leave", Leave),
            ]);
    }

    private void Leave()
    {
        File.Forget();
        Left = true;
    }
}
