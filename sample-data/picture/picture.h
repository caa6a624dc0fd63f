// A picture to draw on: grey or colour, 8 bits a sample, with lines and plain letters as scanners burn them in.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

namespace gauge::sample_case {

struct Colour {
    std::uint8_t red = 255, green = 255, blue = 255;
    static Colour grey(std::uint8_t level) { return {level, level, level}; }
};

class Picture {
public:
    /// Black. @param samplesPerPixel  1: grey (drawn with the red of a colour), 3: red, green, blue.
    Picture(int columns, int rows, int samplesPerPixel);

    int columns() const { return m_columns; }
    int rows() const { return m_rows; }
    int samplesPerPixel() const { return m_samples; }
    /// Row after row from the top left, the samples of a pixel beside each other.
    const std::vector<std::uint8_t>& bytes() const { return m_bytes; }

    /// Outside the picture nothing happens.
    void set(int x, int y, Colour colour);
    Colour at(int x, int y) const;
    void line(double x0, double y0, double x1, double y1, Colour colour);
    /// Corners included.
    void fill(int x0, int y0, int x1, int y1, Colour colour);
    /// Capital letters, digits and . , : / - + ( ) % = ~ (degree sign), 5 x 7 points each 6 apart, enlarged
    /// `scale` times; (x, y) is the top left. Other characters leave a gap.
    void text(int x, int y, std::string_view words, Colour colour, int scale = 1);

private:
    int m_columns, m_rows, m_samples;
    std::vector<std::uint8_t> m_bytes;
};

/// Width of a text in pixels.
int textWidth(std::string_view words, int scale = 1);

} // namespace gauge::sample_case
