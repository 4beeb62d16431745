using CoatPlan.Jobs;

namespace CoatPlan.App.Desk;

/// <summary>The text of the open job as it is changed: every state it went through, and what was read from the newest.</summary>
internal sealed class EditedJob
{
    private readonly Workshop workshop;

    private readonly JobFile file;

    private readonly History history;

    // The newest state that could be planned: a plan of the next takes from it what is left as it is.
    private ReadyJob? planned;

    // The open map or list is asked for with every drawing and key; the text changes seldom.
    private (JobDocument Document, JobPath Path, Outline Outline)? outlined;

    /// <summary>The text of a file, not changed yet.</summary>
    /// <param name="workshop">Reads jobs.</param>
    /// <param name="file">The job's file.</param>
    public EditedJob(Workshop workshop, JobFile file)
    {
        (this.workshop, this.file, history, Document) = (workshop, file, new History(file.Text), file.Text);
        Reading = Read(Document);
    }

    /// <summary>The newest text.</summary>
    public string Text => history.Text;

    /// <summary>The newest text with what stands in it.</summary>
    public JobDocument Document { get; private set; }

    /// <summary>What was read from it.</summary>
    public IntakeResult Reading
    {
        get;
        private set
        {
            field = value;
            planned = value.Ready ?? planned;
        }
    }

    /// <summary>What undo would take back; null for nothing.</summary>
    public string? Undoable => history.Undoable;

    /// <summary>What redo would make again; null for nothing.</summary>
    public string? Redoable => history.Redoable;

    /// <summary>The text before the last change; null where there is none.</summary>
    public string? Before => history.Before;

    /// <summary>Reads a text as if it were this job's, without taking it up.</summary>
    /// <param name="document">The text.</param>
    public IntakeResult Read(JobDocument document) => workshop.Read(document, file.Name, file.Path, planned);

    /// <summary>What stands in a map or list of the job, and what could.</summary>
    /// <param name="path">The way to it.</param>
    public Outline At(JobPath path)
    {
        if (outlined is not { } known || !ReferenceEquals(known.Document, Document) || !known.Path.Equals(path))
            outlined = known = (Document, path, JobOutline.At(Document, path, workshop.Trade.Catalogue.Vocabulary));
        return known.Outline;
    }

    /// <summary>Takes up a text, whatever can be read from it.</summary>
    /// <param name="document">The text.</param>
    /// <param name="what">What was done, in words.</param>
    public void Put(JobDocument document, string what) => Put(document, Read(document), what);

    /// <summary>Makes a change; one that would make the job unreadable is refused.</summary>
    /// <param name="editing">The change.</param>
    /// <param name="what">What is done, in words.</param>
    /// <returns>Why it was refused; null where it was made.</returns>
    public string? Change(JobEditing editing, string what)
    {
        if (editing.Document is not { } document)
            return Complaint.Of(editing.Problems);

        var reading = Read(document);
        if (reading.Ready is null)
            return Complaint.Of(reading.Problems);

        Put(document, reading, what);
        return null;
    }

    /// <summary>Makes a change of a field: field by field a job is unfinished for a while, so what is missing is told, and only what was typed wrongly is refused.</summary>
    /// <param name="editing">The change.</param>
    /// <param name="what">What is done, in words.</param>
    /// <param name="typed">What was typed; null for nothing.</param>
    /// <returns>Why it was refused; null where it was made.</returns>
    public string? ChangeField(JobEditing editing, string what, string? typed)
    {
        if (editing.Document is not { } document)
            return Complaint.Of(editing.Problems);

        var reading = Read(document);
        var wrong = reading.Problems
            .Where(problem => typed is { Length: > 0 } && problem.Tried == typed && !Reading.Problems.Any(before => before.Message == problem.Message))
            .ToImmutableArray();
        if (!wrong.IsEmpty)
            return Complaint.Of(wrong);
        if (typed is { Length: 0 })
            return "a value is needed; delete it to go back to its default";

        Put(document, reading, what);
        return null;
    }

    /// <summary>Judges a value where a change would put it, without making the change.</summary>
    /// <param name="editing">The change.</param>
    /// <param name="typed">The value.</param>
    /// <returns>What is wrong with it; null for nothing.</returns>
    public string? WrongIn(JobEditing editing, string typed)
    {
        if (editing.Document is not { } document)
            return Complaint.Of(editing.Problems);

        var wrong = Read(document).Problems.Where(problem => problem.Tried == typed).ToImmutableArray();
        return wrong.IsEmpty ? null : Complaint.Of(wrong);
    }

    /// <summary>Goes back by one change.</summary>
    /// <returns>What was taken back; null where there was nothing.</returns>
    public string? Undo()
    {
        if (history.Undoable is not { } what)
            return null;

        history.Undo();
        ReadAgain();
        return what;
    }

    /// <summary>Goes forth by one change.</summary>
    /// <returns>What was made again; null where there was nothing.</returns>
    public string? Redo()
    {
        if (history.Redoable is not { } what)
            return null;

        history.Redo();
        ReadAgain();
        return what;
    }

    private void ReadAgain()
    {
        Document = Text;
        Reading = Read(Document);
    }

    private void Put(JobDocument document, IntakeResult reading, string what)
    {
        history.Add(document.Text, what);
        (Document, Reading) = (document, reading);
    }
}
