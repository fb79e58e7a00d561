global using System;
global using System.Collections.Generic;
global using System.Linq;
global using System.Numerics;
global using Condyle;

namespace Harbour;

/// <summary>A dock worker's joints, as a rig of the corpus finds them: on its feet, facing +Z, arms out and a little bent, legs as well.</summary>
internal sealed record Docker(Joint Pelvis, Joint Waist, Joint Chest, Joint Head, JointPair Collar, JointPair Shoulder, JointPair Elbow, JointPair Wrist, JointPair Hip, JointPair Knee, JointPair Ankle, JointPair Toes)
{
    public static Docker In(RigDraft rig)
    {
        var pelvis = rig.Skeleton("docker").Root("pelvis", at: new Vector3(0, 1, 0));
        var waist = pelvis.Child("waist", at: new Vector3(0, 0.15f, 0));
        var chest = waist.Child("chest", at: new Vector3(0, 0.2f, 0));
        var head = chest.Child("head", at: new Vector3(0, 0.3f, 0));
        var arms = Side.Both.Select(side => Limb(chest, side, "collar", new(0.05f, 0.15f, 0), "shoulder", new(0.12f, 0.02f, 0), "elbow", new(0.28f, 0, -0.02f), "wrist", new(0.26f, 0, 0.02f))).ToList();
        var legs = Side.Both.Select(side => Limb(pelvis, side, "hip", new(0.1f, -0.05f, 0), "knee", new(0, -0.45f, 0.02f), "ankle", new(0, -0.43f, -0.02f), "toes", new(0, -0.06f, 0.15f))).ToList();
        JointPair Pair(List<Joint[]> limbs, int joint) => new(limbs[0][joint], limbs[1][joint]);
        return new(pelvis, waist, chest, head, Pair(arms, 0), Pair(arms, 1), Pair(arms, 2), Pair(arms, 3), Pair(legs, 0), Pair(legs, 1), Pair(legs, 2), Pair(legs, 3));
    }

    private static Joint[] Limb(Joint above, Side side, string first, Vector3 one, string second, Vector3 two, string third, Vector3 three, string fourth, Vector3 four)
    {
        Vector3 On(Vector3 left) => left with { X = left.X * side.Sign };
        var a = above.Child($"{first}_{side}", at: On(one));
        var b = a.Child($"{second}_{side}", at: On(two));
        var c = b.Child($"{third}_{side}", at: On(three));
        return [a, b, c, c.Child($"{fourth}_{side}", at: On(four))];
    }
}
