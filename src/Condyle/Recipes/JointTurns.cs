using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>Controls that turn joints, called after them.</summary>
internal static class JointTurns
{
    public static Control Turn(this RigDraft rig, Joint joint, Node under, PlaceId place) =>
        rig.Control("turn_" + rig.NameOf(joint.IdIn(rig)), place).Under(under, place).PlacedAt(joint, place).Lock(Channels.Move, place);

    /// <summary>A control for each joint, each under that of the joint before, and each of them driving the joint or what stands in for it.</summary>
    public static List<Control> TurnEach(this RigDraft rig, IEnumerable<Joint> joints, Node under, Func<Joint, Node> driven, PlaceId place)
    {
        var turns = new List<Control>();
        foreach (var joint in joints)
        {
            var turn = rig.Turn(joint, under, place);
            rig.Drive(driven(joint), place).ByChannels(turn, place);
            turns.Add(turn);
            under = turn;
        }

        return turns;
    }
}
