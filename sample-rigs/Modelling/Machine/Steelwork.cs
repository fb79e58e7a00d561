using Modelling.Anatomy;
using Modelling.Geometry;
using Modelling.Mesh;

namespace Modelling.Machine;

/// <summary>What is to be seen of the crane. Metres, by eye, in each part's own frame.</summary>
internal static class Steelwork
{
    private static readonly Material Paint = new("paint", 0.55, 0.16, 0.05);
    private static readonly Material Steel = new("steel", 0.10, 0.11, 0.12);
    private static readonly Material Iron = new("iron", 0.22, 0.23, 0.24);
    private static readonly Material Glass = new("glass", 0.12, 0.25, 0.30);
    private static readonly Material Wire = new("wire", 0.06, 0.05, 0.04);

    public static void Add(MeshBuilder mesh, JointTree joints)
    {
        Portal(new Workshop(mesh, joints["portal"]));
        House(new Workshop(mesh, joints["house"]));
        Jib(new Workshop(mesh, joints["jib"]));
        Sheave(new Workshop(mesh, joints["jib_end"]), 0.36);
        foreach (var side in new[] { "left", "right" })
        {
            Cylinder(new Workshop(mesh, joints[$"cylinder_{side}"]));
            Ram(new Workshop(mesh, joints[$"ram_{side}"]));
        }

        // A little longer than from joint to joint: no gap shows where the rope bows.
        for (var i = 1; i <= HarbourCrane.RopeJoints; i++)
            new Workshop(mesh, joints[$"strand_{i}"]).Drum(Wire, default, -Vec.Up * (1.02 * HarbourCrane.RopeLength / HarbourCrane.RopeJoints), 0.045, 6);
        Block(new Workshop(mesh, joints["hook_block"]));
        Hook(new Workshop(mesh, joints["hook"]));
    }

    private static void Portal(Workshop portal)
    {
        foreach (var z in new[] { -2.0, 2.0 })
        {
            portal.Box(Paint, new Vec(0, 0.55, z), 5.6, 0.45, 0.5);
            foreach (var x in new[] { -2.2, 2.2 })
            {
                portal.Bar(Paint, new Vec(x, 0.6, z), new Vec(x * 0.62, 4.3, z * 0.62), 0.42);
                foreach (var wheel in new[] { -0.3, 0.3 })
                    portal.Drum(Steel, new Vec(x + wheel, 0.24, z - 0.16), new Vec(x + wheel, 0.24, z + 0.16), 0.24);
            }

            portal.Bar(Paint, new Vec(-1.8, 2.5, z * 0.8), new Vec(1.8, 2.5, z * 0.8), 0.22);
        }

        foreach (var x in new[] { -1.0, 1.0 })
            portal.Bar(Paint, new Vec(1.8 * x, 2.5, -1.6), new Vec(1.8 * x, 2.5, 1.6), 0.22);
        portal.Box(Paint, new Vec(0, 4.35, 0), 3.3, 0.4, 3.1);
        portal.Drum(Iron, new Vec(0, 4.5, 0), new Vec(0, HarbourCrane.DeckHeight, 0), 1.15, 16);
    }

    private static void House(Workshop house)
    {
        house.Box(Steel, new Vec(0, 0.15, -0.5), 3.2, 0.3, 5.4);
        house.Box(Paint, new Vec(0, 1.3, -1.7), 2.7, 2.0, 2.4);
        house.Box(Steel, new Vec(0, 2.36, -1.7), 2.9, 0.12, 2.6);
        house.Box(Iron, new Vec(0, 0.95, -3.35), 2.9, 1.3, 0.9);

        // The cab looks past the jib, on its left.
        house.Box(Paint, new Vec(1.45, 0.75, 1.0), 1.0, 0.9, 1.5);
        house.Box(Glass, new Vec(1.45, 1.6, 1.0), 0.94, 0.8, 1.44);
        house.Box(Paint, new Vec(1.45, 2.06, 1.0), 1.1, 0.12, 1.6);

        foreach (var x in new[] { -0.45, 0.45 })
        {
            house.Box(Iron, new Vec(x * 1.3, 0.65, 1.0), 0.14, 0.9, 0.7);
            house.Box(Iron, new Vec(x * 1.38, 0.35, 2.0), 0.3, 0.3, 0.4);
        }

        house.Drum(Steel, new Vec(-0.7, 1.0, 1.0), new Vec(0.7, 1.0, 1.0), 0.12);
        house.Drum(Wire, new Vec(-0.35, 0.75, -0.2), new Vec(0.35, 0.75, -0.2), 0.4);
    }

    /// <summary>A lattice of four booms that taper to both ends, with diagonals between them. Its own +Y runs outwards and its +Z is above.</summary>
    private static void Jib(Workshop jib)
    {
        const int Bays = 9;
        static (double HalfWidth, double HalfDepth) Section(double share) => share < 0.3
            ? (0.44, 0.12 + (0.26 * share / 0.3))
            : (0.44 - (0.24 * (share - 0.3) / 0.7), 0.38 - (0.22 * (share - 0.3) / 0.7));
        static Vec Corner(double share, int x, int z) => Section(share) is var (width, depth)
            ? new Vec(x * width, share * HarbourCrane.JibLength, z * depth) : default;

        foreach (var x in new[] { -1, 1 })
        {
            foreach (var z in new[] { -1, 1 })
            {
                jib.Bar(Paint, Corner(0, x, z), Corner(0.3, x, z), 0.13);
                jib.Bar(Paint, Corner(0.3, x, z), Corner(1, x, z), 0.12);
            }
        }

        for (var bay = 0; bay < Bays; bay++)
        {
            var (from, to, flip) = (bay / (double)Bays, (bay + 1) / (double)Bays, bay % 2 == 0 ? 1 : -1);
            foreach (var side in new[] { -1, 1 })
            {
                jib.Bar(Paint, Corner(from, side, flip), Corner(to, side, -flip), 0.07);
                jib.Bar(Paint, Corner(from, flip, side), Corner(to, -flip, side), 0.06);
            }
        }

        foreach (var x in new[] { -1, 1 })
            jib.Box(Iron, new Vec(x * 0.2, HarbourCrane.JibLength, 0), 0.07, 0.9, 0.5);
        jib.Bar(Iron, new Vec(-0.7, 4.5, -0.32), new Vec(0.7, 4.5, -0.32), 0.16);

        // The rope comes up from the winch along the jib's upper side.
        jib.Drum(Wire, new Vec(0, 0.3, 0.2), new Vec(0, HarbourCrane.JibLength - 0.1, 0.36), 0.045, 6);
    }

    /// <summary>Two discs about the rope, which runs down between them.</summary>
    private static void Sheave(Workshop part, double radius)
    {
        foreach (var x in new[] { -1, 1 })
            part.Drum(Steel, new Vec(x * 0.05, 0, 0), new Vec(x * 0.12, 0, 0), radius, 14);
    }

    private static void Cylinder(Workshop cylinder)
    {
        cylinder.Drum(Steel, new Vec(0, -0.1, 0), new Vec(0, 2.9, 0), 0.17);
        cylinder.Drum(Iron, new Vec(-0.2, 0, 0), new Vec(0.2, 0, 0), 0.15);
    }

    private static void Ram(Workshop ram)
    {
        ram.Drum(Iron, new Vec(0, -0.08, 0), new Vec(0, 3.2, 0), 0.09);
        ram.Drum(Iron, new Vec(-0.16, 0, 0), new Vec(0.16, 0, 0), 0.14);
    }

    private static void Block(Workshop block)
    {
        foreach (var x in new[] { -1, 1 })
            block.Box(Paint, new Vec(x * 0.2, -0.1, 0), 0.08, 0.7, 0.5);
        Sheave(block, 0.3);
        block.Box(Iron, new Vec(0, -0.4, 0), 0.48, 0.16, 0.3);
    }

    private static void Hook(Workshop hook) => hook.Rod(Iron, 0.15,
        new Vec(0, 0.06, 0), new Vec(0, -0.22, 0), new Vec(0.06, -0.34, 0), new Vec(0.22, -0.46, 0), new Vec(0.27, -0.64, 0),
        new Vec(0.16, -0.8, 0), new Vec(-0.04, -0.84, 0), new Vec(-0.2, -0.74, 0), new Vec(-0.24, -0.58, 0));
}
