using CoatPlan.App.Desk.Asking;

namespace CoatPlan.App.Desk;

/// <content>The guide that builds a job by asking.</content>
internal sealed partial class JobDesk
{
    private readonly Stack<GuideDraft> draftsBefore = new();

    private LocalDateTime guideStart;

    /// <summary>What was answered so far; null where nothing is being asked.</summary>
    public GuideDraft? Guiding { get; private set; }

    /// <summary>The question of the guide; null where nothing is being asked.</summary>
    public GuideQuestion? GuideAsks { get; private set; }

    /// <summary>How many questions of the guide were answered.</summary>
    public int GuideAnswers => draftsBefore.Count;

    /// <summary>Begins to build a job by asking; a question that is open goes first.</summary>
    /// <param name="start">When work could begin, to begin with.</param>
    public void Guide(LocalDateTime start)
    {
        (Guiding, guideStart) = (new GuideDraft(), start);
        if (Asking is null)
            AskNext();
        Changed?.Invoke();
    }

    private void AskNext()
    {
        var question = GuideQuestions.Next(Guiding!, Catalogue, guideStart);
        (GuideAsks, Message) = (question, "");
        if (question is null)
            FinishGuide("planned; what was answered can be changed here, everything else under Fields");
        else if (question.Rows.IsEmpty)
            Typing = new LineEdit { Asks = question.Asks, InCell = true, Typed = question.Typed, Take = typed => TakeAnswer(question, [typed]) };
        else
            Picking = new Picker(question.Asks, question.Rows, question.Chosen, picked => TakeAnswer(question, picked)) { Several = question.Several, Note = question.Explains };
    }

    // The job is whole after every answer, so that each can be judged by the same rules as a job file.
    private string? TakeAnswer(GuideQuestion question, ImmutableArray<string> answers)
    {
        if (question.Take(answers) is not { } draft)
            return $"expected {question.Expected}";

        var reading = edited.Read(GuideText.Of(draft));
        if (reading.Ready is null)
            return Complaint.Of(reading.Problems);

        draftsBefore.Push(Guiding!);
        Guiding = draft;
        AskNext();
        return null;
    }

    private void GoBackInGuide()
    {
        if (!draftsBefore.TryPop(out var before))
        {
            AskHowToLeaveGuide();
            return;
        }

        Guiding = before;
        AskNext();
    }

    // While a value is typed for the guide, nothing but going back and leaving is asked of the desk.
    private void WhileGuiding(Word word)
    {
        if (word is Word.Quit)
            Quit();
    }

    private void GoOnGuiding()
    {
        if (Guiding is not null && !Left && this is { Asking: null, Picking: null, Typing: null })
            AskNext();
    }

    private void AskHowToLeaveGuide()
    {
        Asking = new Question("Not everything is asked yet.",
            [
                new Answer('g', "Go on asking", () => { }),
                new Answer('t', "Take what was answered, and fill in the rest in the tables", () => FinishGuide("the rest is filled in: look it through")),
                new Answer('e', "Change an example job instead", () => StopGuide("an example job: change it, or start the program again to be asked")),
                new Answer('l', "Leave the program; the answers are lost", Leave),
            ]);
        (Picking, Typing) = (null, null);
    }

    private void FinishGuide(string message)
    {
        var text = GuideText.Of(Guiding!);
        StopGuide(message);
        TakeUp(text, "the answers of the guide", message);
    }

    private void StopGuide(string message)
    {
        (Guiding, GuideAsks, Picking, Typing, Message) = (null, null, null, null, message);
        draftsBefore.Clear();
    }
}
