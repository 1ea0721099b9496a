// SPDX-License-Identifier: GPL-3.0-or-later
// Notches and the high-pass of a mix as handles on the curves: across is frequency, down is cut, the wheel makes it
// wider or narrower.
#pragma once
#include <QObject>
#include <optional>
#include <string>
#include <vector>

#include "app/document/document.h"

class QMouseEvent;
class QWheelEvent;

namespace howlmap::app {

class ResponsePlot;

class FilterHandles : public QObject {
    Q_OBJECT
  public:
    FilterHandles(Document& document, ResponsePlot& plot);

    /// Follows the filters of a mix. The plot is drawn anew only if they changed.
    void set_mix(const std::string& mix);
    /// Number of the handle that was touched last: a notch, or none (also for the high-pass).
    std::optional<std::size_t> chosen_notch() const;
    /// Middle of a handle in the plot; the high-pass is the last one.
    QPoint handle(std::size_t index) const;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Handle {
        double hz, db;
        bool high_pass;
        QString words;
        friend bool operator==(const Handle&, const Handle&) = default;
    };
    static std::vector<Handle> handles_of(const Mix* mix);
    void place();
    bool press(const QMouseEvent& event);
    bool move(const QMouseEvent& event);
    bool release();
    bool wheel(const QWheelEvent& event);
    std::optional<std::size_t> handle_at(QPointF point) const;

    Document& document_;
    ResponsePlot& plot_;
    std::string mix_;
    std::vector<Handle> handles_;
    std::optional<std::size_t> held_, chosen_;
};

}  // namespace howlmap::app
