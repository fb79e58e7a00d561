using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R10;

public sealed class DeckWinch : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var later = new List<Action>();
        var count = 0;
        var bed = rig.Skeleton("deck_winch").Root("bed");
        var systems = rig.Group("systems_group");
        var world = rig.Control("world");

        Func<string, Func<Joint, Control>> under(Control parent) => suffix => joint =>
        {
            count++;
            var made = rig.Control($"{joint.Name}_{suffix}").Under(parent).PlacedAt(joint);
            later.Add(() => rig.Drive(joint).ByChannels(made));
            return made;
        };

        var onWorld = under(world);
        var bedMain = onWorld("main")(bed);
        var onBed = under(bedMain);
        var turns = onBed("turn");

        var drum = bed.Child("drum", at: new Vector3(0, 0.6f, 0));
        var gear = bed.Child("gear", at: new Vector3(0.5f, 0.6f, 0));
        var brake = bed.Child("brake", at: new Vector3(-0.5f, 0.4f, 0.1f));
        turns(drum).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        turns(gear).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ);
        turns(brake).Lock(Channels.Move).LimitTurn(Axis.X, -5, 40);

        // crank arms, one on each side; the closure remembers the last switch
        Switch? shared = null;
        foreach (var side in Side.Both)
            crank(side);
        later.Add(() => rig.Label("hand_crank_label", "BY HAND").ShownBy(shared!.Value));

        foreach (var action in later)
            action();

        if (count != 4)
            throw new InvalidOperationException("the winch has four plain controls");

        void crank(Side side)
        {
            var a = bed.Child($"crank_{side}", at: new Vector3(0.7f * side.Sign, 0.6f, 0));
            var b = a.Child($"rod_{side}", at: new Vector3(0.02f * side.Sign, 0.2f, 0.25f));
            var c = b.Child($"grip_{side}", at: new Vector3(0.02f * side.Sign, 0.2f, -0.25f));
            var chain = rig.Chain(a, c);
            var group = rig.Group(name("{0}_group")).Under(systems).PlacedAt(a);
            rig.Drive(group).ByMatrix(bedMain).KeepingOffset();
            var (ik, fk) = (copy("ik"), copy("fk"));
            var grip = rig.Control(name("{0}_grip")).Under(world).PlacedAt(c);
            solve();
            turn(group, 0);
            var own = grip.Switch("fk");
            shared ??= own;
            rig.Blend(chain).From(ik, own.Inverse).From(fk, own);

            string name(string pattern) => string.Format(pattern, $"crank_{side}");
            Copy copy(string tag) => chain.Copy(tag).Under(group);
            void solve()
            {
                var pole = rig.Control(name("{0}_pole")).Under(bedMain).PlacedAt(ik.PolePoint(0.5f));
                rig.TwoBone(ik).Reach(grip).Face(pole);
            }

            void turn(Node above, int index)
            {
                if (index == chain.Count)
                    return;
                var control = rig.Control($"turn_{chain[index]}").Under(above).PlacedAt(chain[index]);
                later.Add(() => rig.Drive(fk.Of(chain[index])).ByChannels(control));
                turn(control, index + 1);
            }
        }
    }
}
