// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet for the venue's engineer, in the order in which it is needed: risks, plan, input list, mixes with their
// starting equalisers and the ring-out list, cautions. One painter for PDF, print and preview.
#pragma once
#include <QByteArray>
#include <QDate>
#include <QPageSize>
#include <QPainter>
#include <functional>
#include <memory>
#include <optional>

#include "core/analysis/analysis.h"

class QPrinter;

namespace howlmap::app {

struct SheetOptions {
    bool plan = true, inputs = true, mixes = true, risks = true;
    bool one_mix_a_page = false;  ///< for the monitor desk
    QPageSize::PageSizeId paper = QPageSize::A4;
    std::shared_ptr<const Show> since;  ///< an older version: a page says what changed
    QString since_name;
    QDate made = QDate::currentDate();  ///< on every page: which version of the sheet this is
};

/// A4, or Letter where the locale uses it.
QPageSize::PageSizeId paper_of_locale();

struct SheetContent {
    Show show;
    AnalysisResult result;
    /// Most likely first; empty without draws.
    std::vector<BandProbability> ring_out() const {
        return result.tolerance ? result.tolerance->first_ring : std::vector<BandProbability>{};
    }
};

/// The plan as a block of the first page, in points. Kept apart so that the sheet does not know how a plan is drawn.
struct PlanBlock {
    std::function<double(QSizeF room)> height;  ///< what it needs of the room, at most all of its height
    std::function<void(QPainter&, const QRectF&)> draw;
    QString caption;  ///< below it, may be empty
};

/// Draws all pages; the painter's device has `size_pt` (paper in points) and the painter is scaled to points.
/// `next_page` is called between pages. Returns the number of pages.
int draw_sheet(QPainter& painter, QSizeF size_pt, const SheetContent& content, const SheetOptions& options,
               const PlanBlock& plan, const std::function<void()>& next_page);

/// The whole sheet as a PDF. The same content gives the same bytes but for the dates that PDF itself records.
QByteArray sheet_pdf(const SheetContent& content, const SheetOptions& options, const PlanBlock& plan);

/// Draws on a printer (also that of a preview).
void print_sheet(QPrinter& printer, const SheetContent& content, const SheetOptions& options, const PlanBlock& plan);

}  // namespace howlmap::app
