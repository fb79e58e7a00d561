using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Gives columns as registers. Constants are the same for all rigs.</summary>
internal static class ColumnAccess
{
    extension(Numbers column)
    {
        public WideNumbers Registers
        {
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            get => new(ref column.First);
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Lane Wide(int index) => column.Registers[index];

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(int index, Lane value)
        {
            var registers = column.Registers;
            registers[index] = value;
        }
    }

    extension(Vectors column)
    {
        public WideVectors Registers
        {
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            get => new(ref column.First);
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideVector Wide(int index) => column.Registers[index];

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(int index, in WideVector value)
        {
            var registers = column.Registers;
            registers[index] = value;
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideVector Constant(int index) => Same(ref Unsafe.Add(ref column.First, index * Vectors.Components));
    }

    extension(Rotations column)
    {
        public WideTurns Registers
        {
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            get => new(ref column.First);
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideTurn Wide(int index) => column.Registers[index];

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(int index, in WideTurn value)
        {
            var registers = column.Registers;
            registers[index] = value;
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideTurn Constant(int index)
        {
            ref var first = ref Unsafe.Add(ref column.First, index * Rotations.Components);
            return new(Lanes.Create(first), Lanes.Create(Unsafe.Add(ref first, 1)), Lanes.Create(Unsafe.Add(ref first, 2)), Lanes.Create(Unsafe.Add(ref first, 3)));
        }
    }

    extension(Rigids column)
    {
        public WideRigids Registers
        {
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            get => new(ref column.First);
        }
    }

    extension(Affines column)
    {
        public WideAffines Registers
        {
            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            get => new(ref column.First);
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideAffine Wide(int index) => column.Registers[index];

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(int index, in WideAffine value)
        {
            var registers = column.Registers;
            registers[index] = value;
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideAffine Constant(int index)
        {
            ref var first = ref Unsafe.Add(ref column.First, index * Affines.Components);
            return new(Same(ref first), Same(ref Unsafe.Add(ref first, 3)), Same(ref Unsafe.Add(ref first, 6)), Same(ref Unsafe.Add(ref first, 9)));
        }
    }

    extension(Stands stands)
    {
        /// <summary>The frame that channels stand in.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideAffine Frame(int i, Buffers pose)
        {
            var world = pose.Worlds.Wide(stands.Bases[i]);
            return stands.Placements is null ? world : world * stands.Placements.Constant(i);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WideVector Same(ref float first) => new(Lanes.Create(first), Lanes.Create(Unsafe.Add(ref first, 1)), Lanes.Create(Unsafe.Add(ref first, 2)));
}
