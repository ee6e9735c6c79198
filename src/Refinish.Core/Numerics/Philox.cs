namespace Refinish.Numerics;

/// <summary>
/// Philox4x32-10: ten rounds that scramble a counter of four words under a key of two. Salmon, Moraes, Dror and Shaw, "Parallel random
/// numbers: as easy as 1, 2, 3", SC11 (2011); held to the known answers of its authors by a test.
/// </summary>
internal static class Philox
{
    public static void Block(ulong seed, ref uint c0, ref uint c1, ref uint c2, ref uint c3)
    {
        uint k0 = (uint)seed;
        uint k1 = (uint)(seed >> 32);
        for (int round = 0; round < 10; round++)
        {
            ulong p0 = 0xD2511F53ul * c0;
            ulong p1 = 0xCD9E8D57ul * c2;
            c0 = (uint)(p1 >> 32) ^ c1 ^ k0;
            c1 = (uint)p1;
            c2 = (uint)(p0 >> 32) ^ c3 ^ k1;
            c3 = (uint)p0;
            k0 = unchecked(k0 + 0x9E3779B9u);
            k1 = unchecked(k1 + 0xBB67AE85u);
        }
    }
}
