using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R09;

public abstract record Piece(string Name, Vector3 At)
{
    public sealed record Body(string Name, Vector3 At, params Piece[] Bolted) : Piece(Name, At);

    public sealed record Wheel(string Name, Vector3 At, bool Steers) : Piece(Name, At);

    public sealed record Slide(string Name, Vector3 At, float Travel, params Piece[] Bolted) : Piece(Name, At);

    public sealed record Tilt(string Name, Vector3 At, (float From, float To) Range, params Piece[] Bolted) : Piece(Name, At);

    public sealed record Lever(string Name, Vector3 At) : Piece(Name, At);

    public sealed record Ram(string Name, Vector3 At, Vector3 Rod) : Piece(Name, At);

    public sealed record Lamp(string Name, Vector3 At) : Piece(Name, At);
}

/// <summary>A counterbalance forklift: a description of pieces, and a match over it for everything that is asked of them.</summary>
public sealed class Forklift : IRigDefinition
{
    private static readonly Piece Truck =
        new Piece.Body("chassis", new(0, 0.35f, 0),
            new Piece.Wheel("wheel_front_left", new(0.5f, 0, 0.7f), Steers: false),
            new Piece.Wheel("wheel_front_right", new(-0.5f, 0, 0.7f), Steers: false),
            new Piece.Wheel("wheel_back_left", new(0.45f, -0.05f, -0.7f), Steers: true),
            new Piece.Wheel("wheel_back_right", new(-0.45f, -0.05f, -0.7f), Steers: true),
            new Piece.Ram("tilt_ram_left", new(0.3f, 0.3f, 0.5f), new(0, 0.2f, 0.4f)),
            new Piece.Ram("tilt_ram_right", new(-0.3f, 0.3f, 0.5f), new(0, 0.2f, 0.4f)),
            new Piece.Tilt("mast", new(0, 0.1f, 0.95f), (-6, 10),
                new Piece.Slide("mast_inner", new(0, 0.1f, 0), 1.8f,
                    new Piece.Slide("carriage", new(0, -0.1f, 0.1f), 1.6f,
                        new Piece.Slide("fork_left", new(0.25f, -0.2f, 0.05f), 0.2f),
                        new Piece.Slide("fork_right", new(-0.25f, -0.2f, 0.05f), -0.2f)))),
            new Piece.Body("cab", new(0, 0.7f, -0.1f),
                new Piece.Tilt("steering_wheel", new(0, 0.2f, 0.35f), (-720, 720)),
                new Piece.Lever("lift_lever", new(-0.2f, 0.15f, 0.3f)),
                new Piece.Lever("tilt_lever", new(-0.25f, 0.15f, 0.3f)),
                new Piece.Body("seat", new(0, 0.1f, -0.15f)),
                new Piece.Lever("hand_brake", new(0.25f, 0.1f, 0.2f)),
                new Piece.Lamp("beacon", new(0, 1.1f, -0.3f))));

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("forklift");
        var world = rig.Control("world");
        var rams = new List<(Joint Root, Joint Rod)>();
        var made = new Dictionary<string, (Joint Joint, Control Control)>();

        Add(Truck, null, world);

        var mast = made["mast"] is var (joint, _) ? joint : throw new InvalidOperationException();
        foreach (var (root, rod) in rams)
        {
            var follow = rig.Control($"{rod}_follow").Under(made["chassis"].Control).PlacedAt(rod).Lock(Channels.All);
            rig.Drive(rod).ByChannels(mast).KeepingOffset();
            rig.Drive(root).ByMatrix(follow).KeepingOffset().Accept("CDY3001", "the ram is posed by hand where it shows");
        }

        foreach (var pair in made)
        {
            var text = pair switch
            {
                { Key: "mast" } => "TILT",
                { Key: "carriage" } => "LIFT",
                { Key: ['f', 'o', 'r', 'k', ..] } => "REACH",
                _ => null,
            };
            if (text is { Length: > 0 })
                rig.Label($"{pair.Key}_label", text).Under(pair.Value.Control).ShownBy(pair.Value.Control.Switch("hint", 1));
        }

        void Add(Piece piece, Joint? above, Control parent)
        {
            var joint = above is { } over ? over.Child(piece.Name, RoleOf(piece), piece.At) : skeleton.Root(piece.Name, RoleOf(piece), piece.At);
            var control = rig.Control($"{piece.Name}_handle").Under(parent).PlacedAt(joint);
            made[piece.Name] = (joint, control);

            control = piece switch
            {
                Piece.Wheel { Steers: true } => control.Lock(Channels.Move | Channels.TurnZ).LimitTurn(Axis.Y, -75, 75),
                Piece.Wheel => control.Lock(Channels.Move | Channels.TurnY | Channels.TurnZ),
                Piece.Slide { Travel: > 1 and var travel } => control.Lock(Channels.Turn | Channels.MoveX | Channels.MoveZ).LimitMove(Axis.Y, 0, travel),
                Piece.Slide { Travel: < 0 and var travel } => control.Lock(Channels.Turn).LimitMove(Axis.X, travel, -travel),
                Piece.Slide { Travel: var travel } => control.Lock(Channels.Turn).LimitMove(Axis.X, -travel, travel),
                Piece.Tilt { Range: var (from, to) } when to - from > 360 => control.Lock(Channels.Move).LimitTurn(Axis.Z, from, to),
                Piece.Tilt { Range: (var from, var to) } => control.Lock(Channels.Move).LimitTurn(Axis.X, from, to),
                Piece.Lever => control.LimitTurn(Axis.X, -20, 20),
                Piece.Lamp => control.Lock(Channels.Move | Channels.TurnX | Channels.TurnZ),
                Piece.Body or Piece.Ram => control,
                null => throw new ArgumentNullException(nameof(piece)),
                _ => throw new NotSupportedException(piece.GetType().Name),
            };

            switch (piece)
            {
                case Piece.Ram { Rod: var at, Name: var name }:
                    rams.Add((joint, joint.Child(name.Replace("ram", "rod"), at: at)));
                    break;
                case not Piece.Ram:
                    rig.Drive(joint).ByChannels(control);
                    break;
            }

            foreach (var child in BoltedTo(piece))
                Add(child, joint, control);
        }
    }

    private static JointRole RoleOf(Piece piece) => piece is Piece.Lamp or Piece.Lever { Name: not "lift_lever" } ? JointRole.Helper : JointRole.Deform;

    private static ReadOnlySpan<Piece> BoltedTo(Piece piece) => piece switch
    {
        Piece.Body { Bolted: [_, ..] bolted } => bolted,
        Piece.Slide { Bolted: var bolted } => bolted,
        Piece.Tilt { Bolted: [] } => [],
        Piece.Tilt { Bolted: var bolted } => bolted,
        _ => [],
    };
}
