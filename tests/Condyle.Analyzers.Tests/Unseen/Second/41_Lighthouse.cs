using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R41;

/// <summary>The lighthouse on the mole: lamp house, lens, shutters and a davit. Names and parents follow the scopes in which parts are written.</summary>
public sealed class Lighthouse : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        using var writer = new ScopedWriter(rig);
        var tower = writer.Root("lighthouse", "tower");
        using (writer.Inside(tower))
        {
            var gallery = writer.Part("gallery", new Vector3(0, 14, 0));
            using (writer.Inside(gallery))
            using (writer.Named("lamp"))
            {
                var house = writer.Part("house", Vector3.UnitY, Channels.TurnY);
                using (writer.Inside(house))
                {
                    var lens = writer.Part("lens", new Vector3(0, 0.5f, 0), Channels.TurnY);
                    foreach (var quarter in new[] { "north", "east", "south", "west" })
                    {
                        using var _ = writer.Named(quarter);
                        writer.Part("shutter", Facing(quarter) * 0.8f, Channels.TurnX);
                    }

                    writer.Mark(lens, "LIT");
                }
            }

            using var davit = writer.Named("davit");
            writer.Chain(new Vector3(1.2f, 3, 0), 3);
        }

        if (writer.Depth != 0)
            rig.Group("unbalanced").Accept("CDY1001", because: "a reminder for whoever opened a scope and left it open");
    }

    private static Vector3 Facing(string quarter) => quarter switch
    {
        "north" => Vector3.UnitZ,
        "south" => -Vector3.UnitZ,
        "east" => -Vector3.UnitX,
        _ => Vector3.UnitX,
    };
}

internal sealed class ScopedWriter(RigDraft rig) : IDisposable
{
    private readonly Stack<string> names = new();
    private readonly Stack<(Joint Joint, Control Control)> parents = new();
    private readonly Dictionary<Joint, Control> controls = [];
    private int parts;

    public int Depth => parents.Count + names.Count;

    public Joint Root(string skeleton, string name)
    {
        var joint = rig.Skeleton(skeleton).Root(name);
        controls[joint] = rig.Control("all").PlacedAt(joint);
        rig.Drive(joint).ByChannels(controls[joint]);
        return joint;
    }

    public Scope Inside(Joint joint)
    {
        parents.Push((joint, controls[joint]));
        return new Scope(() => parents.Pop());
    }

    public Scope Named(string word)
    {
        names.Push(word);
        return new Scope(() => names.Pop());
    }

    public Joint Part(string word, Vector3 at, Channels free = Channels.All ^ Channels.Scale)
    {
        var (above, control) = parents.Peek();
        var prefix = names.ToArray();
        Array.Reverse(prefix);
        var joint = above.Child(string.Join('_', [.. prefix, word]), at: at);
        var own = rig.Control($"turn_{joint.Name}").Under(control).PlacedAt(joint);
        rig.Drive(joint).ByChannels(free == (Channels.Move | Channels.Turn) ? own : own.Lock(Channels.All & ~free));
        controls.Add(joint, own);
        parts++;
        return joint;
    }

    public void Chain(Vector3 at, int count)
    {
        var opened = 0;
        try
        {
            while (opened < count)
            {
                var joint = Part($"{opened + 1}", opened == 0 ? at : new Vector3(0.3f, 0.5f, 0));
                if (opened == 1 && joint.Name.Length > 8)
                    return;
                parents.Push((joint, controls[joint]));
                opened++;
            }
        }
        finally
        {
            for (; opened > 0; opened--)
                parents.Pop();
        }
    }

    public void Mark(Joint joint, string text)
    {
        var lit = controls[joint].Switch("lit", parts > 4 ? 1 : 0);
        rig.Label($"{joint}_label", text).Under(joint).ShownBy(lit);
        rig.Label($"{joint}_dark_label", "DARK").Under(joint).ShownBy(lit.Inverse);
    }

    public void Dispose()
    {
        names.Clear();
        parents.Clear();
    }

    public readonly struct Scope(Action leave) : IDisposable
    {
        public void Dispose() => leave?.Invoke();
    }
}
