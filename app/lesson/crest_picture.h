// SPDX-License-Identifier: GPL-3.0-or-later
// Crests that leave a loudspeaker, and those that the floor sends back, as one picture: the same time for a frame
// however many there are.
#pragma once
#include <QColor>
#include <QImage>
#include <QPointF>
#include <vector>

namespace howlmap::app {

class CrestPicture {
  public:
    /// Where the loudspeaker stands in a picture, in pixels; the floor is its lower edge. Below it the mirror image
    /// stands as deep.
    struct Place {
        QSize size;
        QPointF source;
        double metre_px = 100.0;
        friend bool operator==(const Place&, const Place&) = default;
    };
    struct Waves {
        const std::vector<double>* fan = nullptr;  ///< amplitudes to the axis by the angle above level, a whole turn
        double wave_m = 1.0, phase = 0.0;          ///< length; turns since a crest left
        bool bounce = false;
        QColor ink;
    };
    /// A picture to be stretched over the place: large ones are drawn coarser, so that a frame takes no longer.
    const QImage& draw(const Place& place, const Waves& waves);

  private:
    /// How far and in which direction each pixel lies from a source.
    struct Field {
        std::vector<float> far_px, turn;
    };
    void measure(const Place& place);
    void fill(Field& field, QPointF source) const;

    Place place_;
    Field direct_, mirrored_;
    double coarser_ = 1.0;
    QImage picture_;
};

}  // namespace howlmap::app
