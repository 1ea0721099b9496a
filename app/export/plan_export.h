// SPDX-License-Identifier: GPL-3.0-or-later
// The plan as the bytes of a file.
#pragma once
#include <QByteArray>
#include <QImage>
#include <QPageLayout>
#include <QSize>
#include <optional>

#include "app/export/plan_painter.h"
#include "core/units/job.h"

namespace howlmap::app {

inline constexpr double kLeastDpi = 30.0, kMostDpi = 1200.0;
inline constexpr int kMostPictureSide = 20000;  ///< a side of a PNG

enum class PlanFormat { png, svg, pdf };

struct PlanFile {
    PlanFormat format = PlanFormat::pdf;
    std::optional<QSize> size;  ///< of a PNG in pixels; absent: a page at its resolution
    double dpi = 150.0;         ///< of a PNG, kLeastDpi..kMostDpi
    bool transparent = false;   ///< PNG and SVG without a page behind the plan
};

/// The format that the ending of a file name says; none for another ending.
std::optional<PlanFormat> plan_format_of(const QString& file_name);
/// A4, or Letter where feet are used, turned as the plan wants.
QPageLayout plan_page(const Show& show, const PlanDrawing& drawing);
/// Bytes of the plan; empty when the picture could not be made or the job was cancelled. Text stays text in SVG and
/// PDF. Needs an application object with fonts.
QByteArray plan_bytes(const Show& show, const PlanDrawing& drawing, const PlanFile& file, const Job& job = {});

/// A part of a show without a page: its objects with their names, to scale. For the clipboard.
QByteArray objects_svg(const Show& part, const PlanDrawing& drawing);
QImage objects_image(const Show& part, const PlanDrawing& drawing);

}  // namespace howlmap::app
