using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY3006: channels that are written land on their source wherever a matrix puts the node, so the matrix moves nothing.</summary>
internal sealed class MatrixUnderChannels : RuleOfMoves
{
    public override string Id => "CDY3006";

    public override string Title => "Matrix drive onto a node whose channels are driven as well";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "leave the matrix out";

    protected override IEnumerable<Finding> Check(RigModel model, Moves moves, Conventions conventions)
    {
        foreach (var node in model.Nodes)
        {
            // A solver starts from where its copy is carried, and a response comes on top: they need the matrix.
            var all = moves.Of(node);
            if (node.IsExported || all.Count < 2
                || all.LastOrDefault(move => move.What == Moved.Placement && move.Sentence is RigDrive) is not { } matrix
                || all.LastOrDefault(move => move.What == Moved.Channels) is not { Sentence: RigDrive or RigBlend { Node: not null }, Written: Move.Whole } channels
                || !matrix.IsSaidWith(channels) || matrix.Leaders[0].Node is not { } carrier)
                continue;
            var said = ((RigDrive)matrix.Sentence).Sources.Last(source => source.Way == DriveWay.Matrix);
            yield return new Finding(
                this,
                matrix.Sentence,
                $"{node.Title} follows {carrier.Title} by matrix, but {channels.Title} sets its channels so that it lands there wherever the matrix has put it: following {carrier.Title} does nothing. Keep the one that is meant.",
                matrix.Place)
            {
                ActsOn = node,
                Related = [.. new[] { channels.Place, channels.Sentence.Place, matrix.Sentence.Place }.Where(place => place != matrix.Place).Distinct()],
                Repairs = matrix.Sentence == channels.Sentence ? [new LeaveOut(said.Event, $"Drive {node.Title} by channels alone")] : [],
            };
        }
    }
}
