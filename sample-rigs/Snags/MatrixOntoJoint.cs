using System.Numerics;
using Condyle;

namespace Snags;

/// <summary>A gangway that moves in the rig and stands still in the engine. CDY3001.</summary>
public sealed class MatrixOntoJoint : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var hinge = rig.Skeleton("gangway").Root("hinge", at: new Vector3(0, 1.1f, 0));
        var walkway = hinge.Child("walkway", at: new Vector3(0, 0, 2));
        var landing = walkway.Child("landing", at: new Vector3(0, 0, 4));

        var quay = rig.Control("quay");
        var rigging = rig.Group("rigging_group").PlacedAt(quay);
        rig.Drive(rigging).ByMatrix(quay);                        // a group is never exported: a matrix is right here

        Node above = rigging;
        foreach (var joint in new[] { hinge, walkway, landing })
        {
            var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            Follow(rig, joint, control);
            above = control;
        }
    }

    // The slip: what is right for the group above is copied for the joints. A matrix doesn't write a joint's own translation, rotation
    // and scale, and those are all that an engine reads: on screen here the gangway swings, in the game it doesn't move.
    private static void Follow(RigDraft rig, Node part, Control control) => rig.Drive(part).ByMatrix(control);
}
