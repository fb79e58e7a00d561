using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Recipes;

/// <summary>Fingers: a group that dials turn and a control under it, for each joint.</summary>
internal static class FingersRecipe
{
    /// <summary>None where the fingers' joints or their options aren't known.</summary>
    public static Fingers? Build(RigDraft rig, Joint wrist, JointSet?[]? fingers, RecipeNames names, Side side, Control hand, Group systems, FingersOptions options, Conventions conventions, PlaceId place)
    {
        if (fingers is null || fingers.Contains(null) || !options.HasThumbFact.TryKnown(out var hasThumb) || !options.SpreadsFact.TryKnown(out var spreads))
            return null;

        Given.APart(names.Part, "A hand", "fingers");
        if (fingers.Length == 0)
            throw new ArgumentException($"The hand '{names.Part}' has no finger. Give it a set of joints for each, or leave it out.", nameof(fingers));
        if (Array.FindIndex(fingers, finger => finger!.Count == 0) is >= 0 and var empty)
            throw new ArgumentException($"Finger {empty + 1} of the hand '{names.Part}' has no joint. Give it those from the knuckle on, or leave it out.", nameof(fingers));

        var parts = rig.Group(names.Group, place).Under(systems, place).PlacedAt(wrist, place);
        rig.Drive(parts, place).ByMatrix(wrist, place);
        var turns = new List<IReadOnlyList<Control>>();
        var curled = new List<IReadOnlyList<Group>>();
        foreach (var finger in fingers)
        {
            var (controls, groups) = Finger(rig, finger!, parts, names, place);
            turns.Add(controls);
            curled.Add(groups);
        }

        var curl = hand.Dial("curl", 0f, 1f, 0f, DialUnit.Share, place);
        for (var i = 0; i < curled.Count; i++)
        {
            var degrees = hasThumb && i == 0 ? options.ThumbDegreesFact : options.CurlDegreesFact;
            var response = rig.Response(curl, place).Key(0f, 0f, null, place).Key(1f, OnSide(degrees, options.CurlAxisFact, fingers[i]!), null, place);
            foreach (var group in curled[i])
                response.OntoTurn(group, options.CurlAxisFact, place);
        }

        var spreading = curled.Skip(hasThumb ? 1 : 0).ToList();
        Dial? spread = spreads && spreading.Count > 1 ? hand.Dial("spread", 0f, 1f, 0f, DialUnit.Share, place) : null;
        if (spread is { } dial)
        {
            // From the first finger to the last one, from the whole angle to as much the other way: the middle one stays.
            for (var i = 0; i < spreading.Count; i++)
            {
                var share = spreading.Count - 1 - (2 * i);
                if (share == 0)
                    continue;
                var degrees = OnSide(options.SpreadDegreesFact.Times((float)share / (spreading.Count - 1)), options.SpreadAxisFact, fingers[fingers.Length - spreading.Count + i]!);
                rig.Response(dial, place).Key(0f, 0f, null, place).Key(1f, degrees, null, place).OntoTurn(spreading[i][0], options.SpreadAxisFact, place);
            }
        }

        return new Fingers(curl, spread, turns, curled, parts);

        Fact<float> OnSide(Fact<float> degrees, Fact<Axis> axis, JointSet finger) =>
            MirroredTurns.SignOf(rig, finger[0], side, axis, options.AllAxesMirrorSaid, conventions).TryKnown(out var sign) ? degrees.Times(sign) : Fact<float>.Open;
    }

    private static (List<Control> Controls, List<Group> Groups) Finger(RigDraft rig, JointSet joints, Node above, RecipeNames names, PlaceId place)
    {
        var (controls, groups) = (new List<Control>(), new List<Group>());
        foreach (var joint in joints)
        {
            var group = rig.Group("curl_" + rig.NameOf(joint.IdIn(rig)) + names.GroupSuffix, place).Under(above, place).PlacedAt(joint, place);
            var control = rig.Turn(joint, group, place).OnLayer(names.Part, place);
            rig.Drive(joint, place).ByChannels(control, place);
            groups.Add(group);
            controls.Add(control);
            above = control;
        }

        return (controls, groups);
    }
}
