namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Puts values into names of the rig, or notes them for its end.</summary>
internal sealed class Observations : IStatements
{
    public int Weight => 8;

    public bool Fits(Author author) => true;

    public void Write(Author author)
    {
        var text = author.Value(AnyType.Text);
        var seen = author.Scope.All.Where(variable => variable.Type is not (FunctionType or HandleType { Name: "RigDraft" })).ToList();
        if (seen.Count > 0 && author.Choose.Chance(75))
        {
            var variable = author.Choose.Of(seen);
            text = Shown.Text(variable.Type, variable.Name, author);
        }

        Say(author, $"$\"{author.Name("s")}_{{{text}}}\"");
    }

    public static void Say(Author author, string text) => author.Code.Line(author.Choose.Chance(60) ? $"{Handles.Rig(author)}.Control({text});" : $"Trace.Note({text});");
}
