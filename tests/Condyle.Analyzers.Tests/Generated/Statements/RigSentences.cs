namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What programs say of the rig besides names: parents, placements, drives, blends, limits, joints.</summary>
internal sealed class RigSentences : IStatements
{
    public int Weight => 4;

    public bool Fits(Author author) => true;

    public void Write(Author author)
    {
        var choose = author.Choose;
        var rig = Handles.Rig(author);
        string Control() => author.Moving(AnyType.Control);
        string Name() => author.Value(AnyType.Text);
        var made = author.Name("made");
        switch (choose.Below(8))
        {
            case 0:
                author.Code.Line($"var {made} = {rig}.Group({Name()}).Under({Control()}){choose.Any("", $".PlacedAt({Control()})")};");
                author.Scope.Add(new Variable(made, AnyType.Group));
                break;
            case 1:
                author.Code.Line($"{rig}.Drive({Control()}).{choose.Any("ByChannels", "ByMatrix")}({Control()}){choose.Any("", ".KeepingOffset()")};");
                break;
            case 2:
                author.Code.Line($"var {made} = {Control()}.Switch({Name()}, {author.Value(NumberType.Float)});");
                author.Code.Line($"{rig}.Blend((Node){Control()}).From({Control()}, {made}.Inverse).From({Control()}, {choose.Any(made, $"{made} * {made}", "0.5f")});");
                break;
            case 3:
                var look = choose.Any("", ".Shaped(ControlShape.Ring, 0.2f)", $".OnLayer({Name()}).Tinted(Tint.Teal)");
                author.Code.Line($"{Control()}.Lock({choose.Any("Channels.Scale", "Channels.Turn | Channels.ScaleX")}){look};");
                break;
            case 4:
                author.Code.Line($"{Control()}.LimitTurn(Axis.{choose.Any("X", "Y", "Z")}, {author.Value(NumberType.Float)}, {author.Value(NumberType.Float)});");
                break;
            case 5:
                author.Code.Line($"{rig}.Label({Name()}, {Name()}).Under({Control()});");
                break;
            default:
                author.Code.Line($"var {made} = {author.Moving(AnyType.Joint)}.Child({Name()}, at: {author.Value(AnyType.Vector)}{choose.Any("", $", turned: {author.Value(AnyType.Turn)}")});");
                author.Scope.Add(new Variable(made, AnyType.Joint));
                break;
        }
    }
}
