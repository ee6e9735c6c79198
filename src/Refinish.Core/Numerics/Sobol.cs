namespace Refinish.Numerics;

/// <summary>
/// The Sobol sequence in Gray-code order with the direction numbers of S. Joe and F. Y. Kuo, "Constructing Sobol sequences with better
/// two-dimensional projections", SIAM Journal on Scientific Computing 30 (2008) 2635–2654, set "new-joe-kuo-6", first 64 dimensions.
/// </summary>
internal static class Sobol
{
    public const int Dimensions = 64;

    private const int Bits = 32;

    // Of each dimension from the second on: the primitive polynomial with all its coefficients as one binary number, then the first odd
    // numbers m.
    private static readonly ushort[][] Polynomials =
    [
        [3, 1],
        [7, 1, 3],
        [11, 1, 3, 1],
        [13, 1, 1, 1],
        [19, 1, 1, 3, 3],
        [25, 1, 3, 5, 13],
        [37, 1, 1, 5, 5, 17],
        [41, 1, 1, 5, 5, 5],
        [47, 1, 1, 7, 11, 19],
        [55, 1, 1, 5, 1, 1],
        [59, 1, 1, 1, 3, 11],
        [61, 1, 3, 5, 5, 31],
        [67, 1, 3, 3, 9, 7, 49],
        [91, 1, 1, 1, 15, 21, 21],
        [97, 1, 3, 1, 13, 27, 49],
        [103, 1, 1, 1, 15, 7, 5],
        [109, 1, 3, 1, 15, 13, 25],
        [115, 1, 1, 5, 5, 19, 61],
        [131, 1, 3, 7, 11, 23, 15, 103],
        [137, 1, 3, 7, 13, 13, 15, 69],
        [143, 1, 1, 3, 13, 7, 35, 63],
        [145, 1, 3, 5, 9, 1, 25, 53],
        [157, 1, 3, 1, 13, 9, 35, 107],
        [167, 1, 3, 1, 5, 27, 61, 31],
        [171, 1, 1, 5, 11, 19, 41, 61],
        [185, 1, 3, 5, 3, 3, 13, 69],
        [191, 1, 1, 7, 13, 1, 19, 1],
        [193, 1, 3, 7, 5, 13, 19, 59],
        [203, 1, 1, 3, 9, 25, 29, 41],
        [211, 1, 3, 5, 13, 23, 1, 55],
        [213, 1, 3, 7, 3, 13, 59, 17],
        [229, 1, 3, 1, 3, 5, 53, 69],
        [239, 1, 1, 5, 5, 23, 33, 13],
        [241, 1, 1, 7, 7, 1, 61, 123],
        [247, 1, 1, 7, 9, 13, 61, 49],
        [253, 1, 3, 3, 5, 3, 55, 33],
        [285, 1, 3, 1, 15, 31, 13, 49, 245],
        [299, 1, 3, 5, 15, 31, 59, 63, 97],
        [301, 1, 3, 1, 11, 11, 11, 77, 249],
        [333, 1, 3, 1, 11, 27, 43, 71, 9],
        [351, 1, 1, 7, 15, 21, 11, 81, 45],
        [355, 1, 3, 7, 3, 25, 31, 65, 79],
        [357, 1, 3, 1, 1, 19, 11, 3, 205],
        [361, 1, 1, 5, 9, 19, 21, 29, 157],
        [369, 1, 3, 7, 11, 1, 33, 89, 185],
        [391, 1, 3, 3, 3, 15, 9, 79, 71],
        [397, 1, 3, 7, 11, 15, 39, 119, 27],
        [425, 1, 1, 3, 1, 11, 31, 97, 225],
        [451, 1, 1, 1, 3, 23, 43, 57, 177],
        [463, 1, 3, 7, 7, 17, 17, 37, 71],
        [487, 1, 3, 1, 5, 27, 63, 123, 213],
        [501, 1, 1, 3, 5, 11, 43, 53, 133],
        [529, 1, 3, 5, 5, 29, 17, 47, 173, 479],
        [539, 1, 3, 3, 11, 3, 1, 109, 9, 69],
        [545, 1, 1, 1, 5, 17, 39, 23, 5, 343],
        [557, 1, 3, 1, 5, 25, 15, 31, 103, 499],
        [563, 1, 1, 1, 11, 11, 17, 63, 105, 183],
        [601, 1, 1, 5, 11, 9, 29, 97, 231, 363],
        [607, 1, 1, 5, 15, 19, 45, 41, 7, 383],
        [617, 1, 3, 7, 7, 31, 19, 83, 137, 221],
        [623, 1, 1, 1, 3, 23, 15, 111, 223, 83],
        [631, 1, 1, 5, 13, 31, 15, 55, 25, 161],
        [637, 1, 1, 3, 13, 25, 47, 39, 87, 257],
    ];

    private static readonly uint[][] Directions = AllDirections();

    /// <summary>The number of one dimension, as a fraction of 2³².</summary>
    public static uint At(int dimension, uint index)
    {
        uint[] directions = Directions[dimension];
        uint gray = index ^ (index >> 1);
        uint x = 0;
        for (int bit = 0; gray != 0; bit++, gray >>= 1)
        {
            if ((gray & 1) != 0)
            {
                x ^= directions[bit];
            }
        }

        return x;
    }

    private static uint[][] AllDirections()
    {
        uint[][] all = new uint[Dimensions][];
        all[0] = new uint[Bits];
        for (int i = 0; i < Bits; i++)
        {
            all[0][i] = 1u << (Bits - 1 - i);
        }

        for (int dimension = 1; dimension < Dimensions; dimension++)
        {
            all[dimension] = DirectionsOf(Polynomials[dimension - 1]);
        }

        return all;
    }

    // v_i = a₁ v_(i−1) ⊕ … ⊕ a_(s−1) v_(i−s+1) ⊕ v_(i−s) ⊕ (v_(i−s) >> s), with s the degree of the polynomial.
    private static uint[] DirectionsOf(ushort[] numbers)
    {
        int degree = numbers.Length - 1;
        uint[] v = new uint[Bits];
        for (int i = 0; i < Bits; i++)
        {
            if (i < degree)
            {
                v[i] = (uint)numbers[i + 1] << (Bits - 1 - i);
                continue;
            }

            v[i] = v[i - degree] ^ (v[i - degree] >> degree);
            for (int k = 1; k < degree; k++)
            {
                if (((numbers[0] >> (degree - k)) & 1) != 0)
                {
                    v[i] ^= v[i - k];
                }
            }
        }

        return v;
    }
}
