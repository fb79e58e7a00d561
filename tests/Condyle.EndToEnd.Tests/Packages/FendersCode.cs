namespace Condyle.EndToEnd.Tests.Packages;

/// <summary>What a team outside has: a delivered skeleton, and a rig of it with three slips.</summary>
internal static class FendersCode
{
    public const string Delivered = """
        {
          "asset": { "version": "2.0" },
          "scene": 0,
          "scenes": [ { "nodes": [0] } ],
          "nodes": [
            { "name": "quay", "children": [1, 2] },
            { "name": "fender_left", "translation": [1, 0.5, 0] },
            { "name": "fender_right", "translation": [-1, 0.5, 0] }
          ],
          "skins": [ { "joints": [0, 1, 2] } ]
        }
        """;

    /// <summary>The group has another suffix than the team's, the blend no inverse, and the quay's joint a drive by matrix.</summary>
    public const string Rig = """
        using Condyle;

        namespace Fenders;

        [SkeletonFile("delivered/fenders.gltf")]
        public sealed class FendersRig : IRigDefinition
        {
            public void Define(RigDraft rig)
            {
                var joints = FendersSkeleton.In(rig);
                var quay = rig.Control("quay_control").PlacedAt(joints.Quay);
                rig.Drive(joints.Quay).ByMatrix(quay);
                var swell = quay.Switch("swell");
                var still = rig.Group("still_group");
                foreach (var side in Side.Both)
                {
                    var rest = rig.Control($"rest_{side}").Under(still).PlacedAt(joints.Fender[side]);
                    var roll = rig.Control($"roll_{side}").Under(quay).PlacedAt(joints.Fender[side]);
                    rig.Blend(joints.Fender[side]).From(rest, swell).From(roll, swell);
                }
            }
        }
        """;
}
