namespace Condyle.Tests.Shared;

/// <content>Aims, twists and falloffs.</content>
internal sealed partial class RandomRig
{
    private void AddTurns(RigDraft rig)
    {
        Times(choices.Below(3), () => AddAim(rig));
        Times(choices.Below(3), () => AddTwist(rig));
        Times(choices.Below(3), () => AddTwistedBone(rig));
        Times(choices.Below(3), () => AddFalloff(rig));
    }

    private Channels RandomChannels()
    {
        var channels = Channels.None;
        while (channels == Channels.None)
        {
            var moves = (Channels)choices.Below(8);
            var scales = (Channels)(choices.Below(8) << 6);
            channels = choices.Below(4) switch
            {
                0 => moves,
                1 => Channels.Turn,
                2 => scales,
                _ => moves | Channels.Turn | (choices.Chance(0.3) ? scales : Channels.None),
            };
        }

        return channels;
    }

    private void AddAim(RigDraft rig)
    {
        Node node = choices.Chance(0.5) ? choices.Of(joints) : choices.Of(controls);
        var (target, up) = (choices.Chance(0.3) ? choices.Of(joints) : RandomNode(), RandomNode());
        if (node == target || NeedsToKnow(target, node) || NeedsToKnow(up, node))
            return;
        Follow(node, target);
        var aim = rig.Aim(node).At(target);

        // A control may rest on what it points at; joints don't.
        if (!IsJoint(node) || !IsJoint(target) || choices.Chance(0.5))
            aim.Along(RandomAxis());
        if (choices.Chance(0.3))
            return;
        Follow(node, up);
        if (choices.Chance(0.5))
            aim.Up(up);
        else
            aim.Up(up, RandomAxis());
    }

    /// <summary>Any joints between any nodes.</summary>
    private void AddTwist(RigDraft rig)
    {
        var (start, end) = (RandomNode(), RandomNode());
        var twisted = Enumerable.Range(0, choices.Between(1, 3)).Select(_ => choices.Of(joints)).Distinct()
            .Where(joint => !NeedsToKnow(start, joint) && !NeedsToKnow(end, joint)).ToArray();
        if (start == end || twisted.Length == 0)
            return;
        foreach (var joint in twisted)
            Follow(joint, start, end);
        Share(twisted.Length == 1 ? rig.Twist(twisted[0]) : rig.Twist(new JointSet(twisted)), start, end);
    }

    /// <summary>A bone with twist joints under its start, and its end under the last of them or beside them.</summary>
    private void AddTwistedBone(RigDraft rig)
    {
        var above = choices.Below(joints.Count);
        var from = RandomNode(); // before there are the new joints, which need it
        var twists = new List<Joint>();
        Times(choices.Between(1, 3), () => twists.Add(NewJoint(JointRole.Twist, choices.Chance(0.6) ? joints.Count - 1 : above, isFirst: twists.Count == 0, above)));
        var (start, end) = (joints[above], NewJoint(JointRole.Deform, choices.Chance(0.7) ? joints.Count - 1 : above, isFirst: false, above));
        if (choices.Chance(0.3))
        {
            foreach (var twist in twists)
                Follow(twist, from, start);
            Share(rig.Twist(new JointSet([.. twists])), from, start);
        }
        else
        {
            var source = choices.Chance(0.5) ? from : NewControl(rig, "end", end);
            MoveEnd(rig, start, end, source);
            foreach (var twist in twists)
                Follow(twist, start, source);
            Share(rig.Twist(new JointSet([.. twists])), start, end);
        }
    }

    private Joint NewJoint(JointRole role, int parent, bool isFirst, int above)
    {
        var under = isFirst ? above : parent;
        var (at, turned, scaled) = RandomRest(0);
        var joint = joints[under].Child(Name("joint"), role, at, turned, scaled);
        AddJoint(joint, under, role);
        return joint;
    }

    private void MoveEnd(RigDraft rig, Joint start, Joint end, Node source)
    {
        Follow(end, source, start);
        if (choices.Chance(0.5))
            rig.Blend(end).From(source, RandomWeight());
        else if (choices.Chance(0.5))
            rig.Drive(end).ByChannels(source).KeepingOffset();
        else
            rig.Drive(end).ByChannels(source).Writing(Channels.Turn);
    }

    private void Share(Twist twist, Node start, Node end)
    {
        twist.Between(start, end);
        if (choices.Chance(0.4))
            twist.Sharing(choices.Between(-1f, 1f), choices.Between(-1f, 1.5f));
    }

    private void AddFalloff(RigDraft rig)
    {
        if (RandomChain(rig) is not { } chain)
            return;
        var copy = choices.Chance(0.4) ? chain.Copy(Name("copy")) : (Copy?)null;
        var turned = chain.Select(joint => copy is { } known ? (Node)known.Of(joint) : joint).ToList();
        foreach (var (joint, before) in turned.Skip(1).Zip(turned).Where(_ => copy is not null))
            Follow(joint, before);
        var source = choices.Chance(0.7) ? choices.Of(controls) : RandomNode();
        if (turned.Any(joint => NeedsToKnow(source, joint)))
            return;
        foreach (var joint in turned)
            Follow(joint, source);
        var falloff = (copy is { } target ? rig.Falloff(target) : rig.Falloff(chain)).From(source);
        if (choices.Chance(0.6))
            falloff.Sharing(choices.Between(0f, 1f), choices.Between(0.1f, 1f), choices.Chance(0.5) ? 1 : choices.Between(-2f, 2f));
        if (choices.Chance(0.4))
            falloff.WithMove();
        if (copy is { } shown)
            rig.Label(Name("label"), "shown").Under(shown.Tip);
    }

    private bool IsJoint(Node node) => joints.Exists(joint => (Node)joint == node);

    private void Follow(Node who, Node first, Node second)
    {
        Follow(who, first);
        Follow(who, second);
    }
}
