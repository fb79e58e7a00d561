using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R32;

/// <summary>The working deck of a trawler, read from the deck plan that the boatyard keeps as text.</summary>
public sealed class TrawlerDeck : IRigDefinition
{
    // name          above        x     y     z      free channels    range
    private const string Plan = """
        # hull first
        hull          -            0     0.4   0     | *              |
        wheelhouse    hull         0     1.8  -2.5   |                |

        # winch and its two drums
        winch         hull         0     0.6   1.2   | ty             | -20..20
        drum_left     winch        0.8   0.3   0     | tx             |
        drum_right    winch       -0.8   0.3   0     | tx             |

        # the gallows over the stern
        gallows       hull         0     1.5  -5.0   | tx             | -15..70
        block_left    gallows      1.1   2.2  -0.3   | tx,tz          | -45..45
        block_right   gallows     -1.1   2.2  -0.3   | tx,tz          | -45..45
        otter_left    block_left   0    -1.4   0     | mx,my,mz,ty    |
        otter_right   block_right  0    -1.4   0     | mx,my,mz,ty    |
        """;

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("trawler");
        var joints = new Dictionary<string, Joint>();
        var controls = new Dictionary<string, Control>();

        foreach (var row in Read(Plan))
        {
            var joint = row.Above == "-"
                ? skeleton.Root(row.Name, at: row.At)
                : joints[row.Above].Child(row.Name, at: row.At);
            joints.Add(row.Name, joint);

            var control = rig.Control("move_" + row.Name).PlacedAt(joint);
            if (controls.TryGetValue(row.Above, out var above))
                control.Under(above);

            if (row.Free == Channels.None)
            {
                // What nobody moves still has to stay with the hull.
                rig.Drive(joint).ByChannels(control.Lock(Channels.All));
                controls[row.Name] = control;
                continue;
            }

            control.Lock(~row.Free & Channels.All);
            if (row.Range is var (from, to))
            {
                foreach (var (flag, axis) in Turns)
                {
                    if (row.Free.HasFlag(flag))
                        control.LimitTurn(axis, from, to);
                }
            }

            rig.Drive(joint).ByChannels(control);
            controls[row.Name] = control;
        }

        Towing(rig, joints, controls);
    }

    private static readonly (Channels Flag, Axis Axis)[] Turns = [(Channels.TurnX, Axis.X), (Channels.TurnY, Axis.Y), (Channels.TurnZ, Axis.Z)];

    private static void Towing(RigDraft rig, Dictionary<string, Joint> joints, Dictionary<string, Control> controls)
    {
        var towing = controls["winch"].Switch("towing");
        foreach (var name in joints.Keys.Where(name => name.StartsWith("otter_")).Order())
        {
            var side = name["otter_".Length..];
            var warp = rig.Group($"warp_{side}_group").Under(controls[$"drum_{side}"]).PlacedAt(joints[name]);
            rig.Label($"warp_label_{side}", $"{side[0]}: towing").Under(warp).ShownBy(towing);
        }
    }

    private static IEnumerable<Row> Read(string plan)
    {
        var lines = plan.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var line in lines)
        {
            if (line.StartsWith('#'))
                continue;

            var columns = line.Split('|');
            var place = columns[0].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var numbers = place[2..].Select(text => float.Parse(text, CultureInfo.InvariantCulture)).ToArray();
            yield return new Row(place[0], place[1], new Vector3(numbers), Channel(columns[1].Trim()), Range(columns[2].Trim()));
        }
    }

    private static Channels Channel(string text)
    {
        if (text == "*")
            return Channels.Move | Channels.Turn;
        var free = Channels.None;
        foreach (var part in text.Split(',', StringSplitOptions.RemoveEmptyEntries))
        {
            free |= part switch
            {
                "mx" => Channels.MoveX,
                "my" => Channels.MoveY,
                "mz" => Channels.MoveZ,
                "tx" => Channels.TurnX,
                "ty" => Channels.TurnY,
                "tz" => Channels.TurnZ,
                _ => throw new FormatException($"'{part}' is no channel."),
            };
        }

        return free;
    }

    private static (float From, float To)? Range(string text)
    {
        var dots = text.IndexOf("..", StringComparison.Ordinal);
        if (dots < 0)
            return null;
        return (float.Parse(text[..dots], CultureInfo.InvariantCulture), float.Parse(text[(dots + 2)..], CultureInfo.InvariantCulture));
    }

    private readonly record struct Row(string Name, string Above, Vector3 At, Channels Free, (float From, float To)? Range);
}
