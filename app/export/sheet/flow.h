// SPDX-License-Identifier: GPL-3.0-or-later
// Text and blocks running down numbered pages. All lengths in points (1/72 inch) whatever the device.
#pragma once
#include <QColor>
#include <QFont>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <functional>

namespace howlmap::app {

/// Only two type sizes on a page, and a larger one for the title.
enum class Type { title, heading, body, small };

QFont sheet_font(Type type);

inline constexpr QColor kShade(0xe6, 0xe6, 0xe6);  ///< behind heads of tables and blocks

/// The text with line breaks in words that are wider than the width, so that none leaves its place.
QString fitted_words(const QString& text, Type type, double width);

/// How close the sheet is set, in points.
struct Spacing {
    double row_rise = 1.8;       ///< above and below the text of a table row
    double fader_height = 78.0;  ///< a row of 31 faders with its labels
    double gap = 8.0;            ///< above a heading, below a mix
};

class Flow {
  public:
    struct Page {
        QSizeF size_pt;  ///< whole paper
        double margin_pt = 40.0;
        QString header, version;  ///< on every page: show name; version date
        int total = 0;            ///< pages altogether, 0 while counting
        Spacing spacing;
    };
    /// `next_page` is called between pages, never before the first one. The painter must be scaled to points.
    Flow(QPainter& painter, Page page, std::function<void()> next_page);

    QPainter& painter() { return painter_; }
    const Spacing& spacing() const { return page_.spacing; }
    double width() const { return body_.width(); }
    double left() const { return body_.left(); }
    double y() const { return y_; }
    double room_left() const { return body_.bottom() - y_; }
    double body_height() const { return body_.height(); }
    bool at_top() const { return y_ <= body_.top(); }
    int page_number() const { return number_; }

    /// Breaks the page unless this much fits below; a block taller than a page starts on a fresh one.
    void need(double height);
    void break_page();
    void skip(double height);
    /// The next `height` points as a rectangle of full width, breaking the page first if they do not fit.
    QRectF take(double height);

    void heading(const QString& text, double keep_with_next = 60.0);
    void paragraph(const QString& text, Type type = Type::body);
    double text_height(const QString& text, Type type, double width) const;
    void text(const QRectF& rect, const QString& text, Type type, int flags = Qt::AlignLeft | Qt::AlignTop);

  private:
    void draw_frame();
    void lines(const QString& text, Type type);

    QPainter& painter_;
    Page page_;
    std::function<void()> next_page_;
    QRectF body_;
    double y_ = 0.0;
    int number_ = 1;
};

}  // namespace howlmap::app
