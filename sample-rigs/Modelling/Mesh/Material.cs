namespace Modelling.Mesh;

/// <summary>A plain material; the colour is linear, as glTF 2.0 has it.</summary>
public sealed record Material(string Name, double Red, double Green, double Blue)
{
    public static readonly Material Skin = new("skin", 0.55, 0.30, 0.20);
    public static readonly Material Jacket = new("jacket", 0.03, 0.07, 0.16);
    public static readonly Material Trousers = new("trousers", 0.17, 0.13, 0.09);
    public static readonly Material Leather = new("leather", 0.035, 0.025, 0.02);
    public static readonly Material Chalk = new("chalk", 0.75, 0.74, 0.70);
    public static readonly Material Wool = new("wool", 0.42, 0.12, 0.04);
}
