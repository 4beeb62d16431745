using CoatPlan.App.Desk;

namespace CoatPlan.App.Screens;

/// <summary>A question with its answers.</summary>
internal static class QuestionScreen
{
    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="question">The question.</param>
    public static void Draw(Canvas canvas, Question question)
    {
        var text = new Reader(canvas, 1, 2);
        text.Say(question.Asks, Ink.Strong);
        text.Skip();
        for (var at = 0; at < question.Answers.Length; at++)
        {
            var chosen = at == question.At;
            text.Item($"{(chosen ? ">" : " ")} {question.Answers[at].Letter}  ", question.Answers[at].Says, chosen ? Ink.ChosenCell : Ink.Plain);
        }

        text.Skip();
        text.Say($"{Keys.NameOf(Word.Enter)} or the letter: answer   {Keys.NameOf(Word.Back)} none of these", Ink.KeyName);
    }
}
