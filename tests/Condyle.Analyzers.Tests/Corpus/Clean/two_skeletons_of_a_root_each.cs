namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // A skeleton for each puffin: each can be exported on its own.
        foreach (var name in new[] { "grey", "white" })
        {
            var body = rig.Skeleton($"{name}_puffin").Root($"{name}_body");
            var puffin = rig.Control($"{name}_puffin_main").PlacedAt(body);
            rig.Drive(body).ByChannels(puffin);
            var head = body.Child($"{name}_head", at: new Vector3(0, 0.1f, 0.02f));
            rig.Drive(head).ByChannels(rig.Control($"{name}_nod").Under(puffin).PlacedAt(head));
        }
    }
}
