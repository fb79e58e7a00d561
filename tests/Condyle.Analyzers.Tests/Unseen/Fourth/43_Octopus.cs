using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R43;

internal sealed class ArmMadeEventArgs(int number, Joint root, Joint tip) : EventArgs
{
    public int Number { get; } = number;

    public Joint Root { get; } = root;

    public Joint Tip { get; } = tip;
}

internal sealed class OctopusSkeleton
{
    public event EventHandler<ArmMadeEventArgs>? ArmMade;

    public event Action<Joint>? MantleMade;

    public void Declare(RigDraft rig)
    {
        var mantle = rig.Skeleton("octopus").Root("mantle", at: new Vector3(0, 0.4f, 0));
        MantleMade?.Invoke(mantle);
        for (var number = 0; number < 8; number++)
        {
            var turn = Quaternion.CreateFromAxisAngle(Vector3.UnitY, number * MathF.PI / 4);
            var root = mantle.Child($"arm_{number}_root", at: Vector3.Transform(new Vector3(0, -0.1f, 0.1f), turn), turned: turn);
            var middle = root.Child($"arm_{number}_middle", at: new Vector3(0, -0.05f, 0.3f));
            var tip = middle.Child($"arm_{number}_tip", at: new Vector3(0, -0.15f, 0.3f));
            ArmMade?.Invoke(this, new ArmMadeEventArgs(number, root, tip));
        }
    }
}

public sealed class Octopus : IRigDefinition
{
    private RigDraft? draft;
    private Control world;
    private Control body;
    private Switch curl;
    private readonly List<Action> afterwards = new();

    public void Define(RigDraft rig)
    {
        draft = rig;
        afterwards.Clear();
        world = rig.Control("world");

        var skeleton = new OctopusSkeleton();
        skeleton.MantleMade += OnMantle;
        skeleton.ArmMade += OnArm;
        skeleton.ArmMade += (_, args) =>
        {
            if (args.Number % 2 == 0)
                afterwards.Add(() => rig.Label($"arm_{args.Number}_label", "CURLED").Under(args.Tip).ShownBy(curl));
        };
        skeleton.Declare(rig);
        skeleton.ArmMade -= OnArm;

        foreach (var action in afterwards)
            action();
    }

    private void OnMantle(Joint mantle)
    {
        body = draft!.Control("body").Under(world).PlacedAt(mantle);
        curl = body.Switch("curl");
        draft.Drive(mantle).ByChannels(body);
    }

    private void OnArm(object? sender, ArmMadeEventArgs args)
    {
        var rig = draft!;
        var arm = rig.Chain(args.Root, args.Tip);
        var group = rig.Group($"arm_{args.Number}_group").PlacedAt(body);
        rig.Drive(group).ByMatrix(body);
        var ik = arm.Copy("ik").Under(group);
        var curled = arm.Copy("curl").Under(group);
        var tip = rig.Control($"arm_{args.Number}_goal").Under(world).PlacedAt(arm.Tip);
        rig.TwoBone(ik).Reach(tip).Face(body);
        afterwards.Add(() =>
        {
            Control above = body;
            foreach (var joint in arm)
            {
                above = rig.Control($"curl_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(curled.Of(joint)).ByChannels(above);
            }
        });
        rig.Blend(arm).From(ik, curl.Inverse).From(curled, curl);
        curl.AlsoOn(tip);
    }
}
