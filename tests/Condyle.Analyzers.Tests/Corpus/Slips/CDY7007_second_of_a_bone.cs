namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var body = rig.Skeleton("docker").Root("body");
        var elbow = body.Child("elbow_left", at: new Vector3(0.5f, 1.4f, 0));
        var twists = new[] { 0.1f, 0.2f }.Select((along, index) => elbow.Child($"elbow_twist_{index + 1}_left", JointRole.Twist, at: new Vector3(along, 0, 0))).ToArray();
        var wrist = elbow.Child("wrist_left", at: new Vector3(0.3f, 0, 0));
        rig.Drive(elbow).ByChannels(rig.Control("turn_elbow").PlacedAt(elbow)); // finds CDY7007
        rig.Drive(wrist).ByChannels(rig.Control("turn_wrist").PlacedAt(wrist));
        rig.Twist(twists.First()).Between(elbow, wrist);
    }
}
