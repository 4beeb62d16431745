namespace CoatPlan.App.Desk;

/// <content>What lies over a place: a value that is typed, a list to pick from, a question, the help.</content>
internal sealed partial class JobDesk
{
    /// <summary>Takes what was typed for the value that is asked for.</summary>
    /// <param name="typed">What was typed.</param>
    /// <returns>Whether it was taken; otherwise the complaint stands in <see cref="Typing"/> with what was typed.</returns>
    public bool Take(string typed)
    {
        if (Typing is not { } edit)
            return false;

        // What is typed may ask for more; only an edit that asked for nothing else is closed.
        edit.Typed = typed;
        edit.Complaint = edit.Take(typed);
        if (edit.Complaint is null && Typing == edit)
            Typing = null;
        KeepInside();
        Changed?.Invoke();
        return edit.Complaint is null;
    }

    /// <summary>Gives the answer with a letter; does nothing where no answer has it.</summary>
    /// <param name="letter">The letter.</param>
    public void Answer(char letter)
    {
        if (Asking?.Answers.FirstOrDefault(answer => answer.Letter == char.ToLowerInvariant(letter)) is { } answer)
            Give(answer);
        Changed?.Invoke();
    }

    /// <summary>Narrows the list that is being picked from.</summary>
    /// <param name="text">What was typed.</param>
    public void Narrow(string text)
    {
        Picking?.Type(text);
        Changed?.Invoke();
    }

    /// <summary>Widens the list that is being picked from.</summary>
    public void Widen()
    {
        Picking?.Erase();
        Changed?.Invoke();
    }

    /// <summary>Chooses a row of the list that is being picked from, as with a mouse.</summary>
    /// <param name="row">The row, from 0.</param>
    public void PointAt(int row)
    {
        Picking?.GoTo(row);
        Changed?.Invoke();
    }

    /// <summary>Opens a list to pick from.</summary>
    /// <param name="picker">The list.</param>
    public void Offer(Picker picker)
    {
        Picking = picker;
        Changed?.Invoke();
    }

    private void Answer(Word word)
    {
        var question = Asking!;
        switch (word)
        {
            case Word.Up or Word.Left or Word.Previous:
                question.At = Math.Max(question.At - 1, 0);
                break;
            case Word.Down or Word.Right or Word.Next:
                question.At = Math.Min(question.At + 1, question.Answers.Length - 1);
                break;
            case Word.Enter:
                Give(question.Answers[question.At]);
                break;
            case Word.Back:
                Asking = null;
                GoOnGuiding();
                break;
        }
    }

    private void Give(Answer answer)
    {
        Asking = null;
        answer.Give();
        GoOnGuiding();
    }

    private void Pick(Picker picker, Word word)
    {
        switch (word)
        {
            case Word.Back:
                Picking = null;
                if (Guiding is not null)
                    GoBackInGuide();
                break;
            case Word.Quit:
                Picking = null;
                Quit();
                break;
            case Word.Mark:
                picker.Mark();
                break;
            case Word.Empty:
                picker.EraseAll();
                break;
            case Word.Enter:
                Picking = null;
                if (picker.Take(picker.Picked()) is { } refused)
                {
                    picker.Complaint = refused;
                    Picking = picker;
                }

                break;
            default:
                picker.GoTo(RowChoice.Moved(picker.At, word, picker.Rows.Length));
                break;
        }
    }

    private void ReadHelp(Word word)
    {
        if (word is Word.Back or Word.Help or Word.Enter)
            (Helping, ReadFrom) = (false, 0);
        else if (word is Word.Quit)
            Quit();
        else
            ReadOn(word);
    }

    private void StopTyping(string message)
    {
        (Typing, Message) = (null, message);
        if (Guiding is not null)
            GoBackInGuide();
    }
}
