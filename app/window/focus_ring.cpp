// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/focus_ring.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QEvent>
#include <QPainter>

#include "app/canvas/plan_view.h"

namespace howlmap::app {
namespace {

class FrameOfFocus : public QWidget {
  public:
    explicit FrameOfFocus(QWidget& around) : QWidget(&around) {
        setAttribute(Qt::WA_TransparentForMouseEvents);
        setAttribute(Qt::WA_NoSystemBackground);
        setFocusPolicy(Qt::NoFocus);
        setGeometry(around.rect());
        around.installEventFilter(this);
        show();
        raise();
    }

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Resize) setGeometry(static_cast<QWidget*>(watched)->rect());
        return false;
    }
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2.0, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
};

bool is_left_without(const QWidget& widget) {
    return (qobject_cast<const QAbstractScrollArea*>(&widget) && !qobject_cast<const PlanView*>(&widget)) ||
           widget.inherits("QCustomPlot");
}

}  // namespace

FocusRing::FocusRing(QObject* parent) : QObject(parent) {
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
}

void FocusRing::follow(QWidget* now) {
    delete ring_;
    if (now && is_left_without(*now)) ring_ = new FrameOfFocus(*now);
}

}  // namespace howlmap::app
