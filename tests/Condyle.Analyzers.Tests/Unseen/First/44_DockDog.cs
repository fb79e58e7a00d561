using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R44;

/// <summary>The watchman's dog. The table is what the designers send; the code below only knows the columns.</summary>
public sealed class DockDog : IRigDefinition
{
    // L|R rows are written once for the left. Positions in centimetres, relative to the parent.
    private const string Table = """
        name;      parent;    role;   x;    y;     z;    free;        limits
        root;      -;         helper; 0;    0;     0;    move,turn;
        pelvis;    root;      deform; 0;    52;    -18;  move,turn;
        # spine
        loin;      pelvis;    deform; 0;    2;     14;   turn;        X=-25..35
        ribs;      loin;      deform; 0;    0.5;   16;   turn;        X=-25..35
        neck;      ribs;      deform; 0;    6;     10;   turn;        X=-60..40 Y=-50..50
        head;      neck;      deform; 0;    10;    9;    turn;        Y=-40..40
        jaw;       head;      deform; 0;    -3;    2;    turnX;       X=0..38
        tail*4;    pelvis;    deform; 0;    1.5;   -7;   turn;        X=-30..30 Y=-45..45
        # legs
        shoulder|; ribs;      deform; 7;    -6;    4;    ;
        elbow|;    shoulder|; deform; 0.5;  -17;   -4;   ;
        paw|;      elbow|;    deform; 0;    -22;   5;    ;
        hip|;      pelvis;    deform; 6;    -3;    -2;   ;
        stifle|;   hip|;      deform; 1;    -18;   5;    ;
        hock|;     stifle|;   deform; 0;    -21;   -6;   ;
        ear|;      head;      deform; 4.5;  5;     -1;   turn;        Z=-20..80
        """;

    private const string Limbs = "shoulder|>paw|:foreleg|@-Z, hip|>hock|:hindleg|@+Z";

    public void Define(RigDraft rig)
    {
        var rows = Read(Table).SelectMany(Unroll).SelectMany(Mirror).ToList();
        var skeleton = rig.Skeleton("dock_dog");
        var joints = new Dictionary<string, Joint>(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            var joint = row.Parent == "-" ? skeleton.Root(row.Name, row.Role, at: row.At) : joints[row.Parent].Child(row.Name, row.Role, at: row.At);
            if (!joints.TryAdd(row.Name, joint))
                throw new InvalidDataException($"Line {row.Line}: '{row.Name}' is there twice.");
        }

        var controls = new Dictionary<string, Control>(StringComparer.Ordinal);
        foreach (var row in rows.Where(row => row.Free != Channels.None))
        {
            var control = rig.Control($"dog_{row.Name}").PlacedAt(joints[row.Name]).Lock(Channels.All & ~Channels.Scale & ~row.Free);
            if (controls.TryGetValue(row.Parent, out var above))
                control.Under(above);
            foreach (var (axis, range) in row.Limits)
                control.LimitTurn(axis, range.From, range.To);
            rig.Drive(joints[row.Name]).ByChannels(control);
            controls.Add(row.Name, control);
        }

        var systems = rig.Group("dog_systems_group");
        var parentOf = rows.ToDictionary(row => row.Name, row => row.Parent);
        foreach (var limb in Limbs.Split(',', StringSplitOptions.TrimEntries).SelectMany(text => Side.Both.Select(side => text.Replace("|", $"_{side}"))))
        {
            var (ends, rest) = limb.Split(':') is [var e, var r] ? (e.Split('>'), r.Split('@')) : throw new InvalidDataException(limb);
            var chain = rig.Chain(joints[ends[0]], joints[ends[1]]).Bending(rest[1] == "+Z" ? Vector3.UnitZ : -Vector3.UnitZ);
            var above = controls[parentOf[ends[0]]];
            var parts = rig.Group($"dog_{rest[0]}_group").Under(systems).PlacedAt(above);
            rig.Drive(parts).ByMatrix(above);
            var reach = chain.Copy("reach").Under(parts);
            var step = rig.Control($"dog_{rest[0]}").Under(controls["root"]).PlacedAt(chain.Tip);
            rig.TwoBone(reach).Reach(step);
            chain.ToList().ForEach(joint => rig.Drive(joint).ByChannels(reach.Of(joint)));
        }
    }

    private static IEnumerable<Row> Read(string table)
    {
        using var reader = new StringReader(table);
        string[]? header = null;
        var line = 0;
        while (reader.ReadLine() is { } text)
        {
            line++;
            if (text.TrimStart() is "" or ['#', ..])
                continue;
            var cells = text.Split(';').Select(cell => cell.Trim()).ToArray();
            if (header is null)
            {
                header = cells;
                continue;
            }

            var values = header.Zip(cells.Concat(Enumerable.Repeat("", header.Length)), KeyValuePair.Create).ToDictionary(StringComparer.OrdinalIgnoreCase);
            yield return new Row(
                line,
                values["name"],
                values["parent"],
                Enum.Parse<JointRole>(values["role"], ignoreCase: true),
                new Vector3(Centimetres(values["x"], line), Centimetres(values["y"], line), Centimetres(values["z"], line)),
                values["free"].Split(',', StringSplitOptions.RemoveEmptyEntries)
                    .Aggregate(Channels.None, (all, word) => all | Enum.Parse<Channels>(word, true)),
                ParseLimits(values["limits"]));
        }
    }

    private static float Centimetres(string cell, int line) =>
        float.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? value / 100
            : throw new InvalidDataException($"Line {line}: '{cell}' is no number.");

    private static SortedList<Axis, (float From, float To)> ParseLimits(string cell)
    {
        var limits = new SortedList<Axis, (float, float)>();
        foreach (var part in cell.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var at = part.IndexOf('=');
            var dots = part.IndexOf("..", at, StringComparison.Ordinal);
            limits.Add(
                Enum.Parse<Axis>(part[..at]),
                (float.Parse(part[(at + 1)..dots], CultureInfo.InvariantCulture), float.Parse(part[(dots + 2)..], CultureInfo.InvariantCulture)));
        }

        return limits;
    }

    // "tail*4" is tail_1 to tail_4, each below the one before.
    private static IEnumerable<Row> Unroll(Row row)
    {
        if (row.Name.Split('*') is not [var stem, var count])
            return [row];
        return Enumerable.Range(1, int.Parse(count, CultureInfo.InvariantCulture))
            .Select(i => row with { Name = $"{stem}_{i}", Parent = i == 1 ? row.Parent : $"{stem}_{i - 1}" });
    }

    private static IEnumerable<Row> Mirror(Row row) => !row.Name.EndsWith('|')
        ? [row]
        : Side.Both.Select(side => row with
        {
            Name = row.Name.Replace("|", "_" + side),
            Parent = row.Parent.Replace("|", "_" + side),
            At = row.At * new Vector3(side.Sign, 1, 1),
        });

    private sealed record Row(
        int Line, string Name, string Parent, JointRole Role, Vector3 At, Channels Free, SortedList<Axis, (float From, float To)> Limits);
}
