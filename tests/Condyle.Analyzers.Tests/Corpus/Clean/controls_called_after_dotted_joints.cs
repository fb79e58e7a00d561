namespace Harbour;

/// <summary>The modeller's names have dots and hyphens, and the controls are called after the joints.</summary>
public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joint = rig.Skeleton("hand").Root("wrist.l");
        foreach (var name in new[] { "thumb-metacarpal.l", "thumb-tip.l" })
        {
            joint = joint.Child(name, at: new Vector3(0.03f, 0, 0.01f));
            rig.Drive(joint).ByChannels(rig.Control($"turn_{joint}").PlacedAt(joint));
        }
    }
}
