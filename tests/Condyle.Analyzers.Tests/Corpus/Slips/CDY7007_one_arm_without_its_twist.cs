namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var arms = new List<(Joint Elbow, Joint Twist, Joint Wrist)>();
        var body = rig.Skeleton("docker").Root("body");
        foreach (var side in Side.Both)
        {
            var elbow = body.Child($"elbow_{side}", at: new Vector3(0.5f * side.Sign, 1.4f, 0));
            arms.Add((elbow, elbow.Child($"elbow_twist_{side}", JointRole.Twist, at: new Vector3(0.13f * side.Sign, 0, 0)), elbow.Child($"wrist_{side}", at: new Vector3(0.26f * side.Sign, 0, 0))));
        }

        foreach (var (elbow, twist, wrist) in arms)
        {
            rig.Drive(elbow).ByChannels(rig.Control($"turn_{elbow}").PlacedAt(elbow)); // finds CDY7007
            rig.Drive(wrist).ByChannels(rig.Control($"turn_{wrist}").PlacedAt(wrist));
        }

        rig.Twist(arms[0].Twist).Between(arms[0].Elbow, arms[0].Wrist);
    }
}
