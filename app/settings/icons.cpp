// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/icons.h"

#include <QFile>
#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <QSvgRenderer>

namespace howlmap::app {
namespace {

class InkIcon : public QIconEngine {
  public:
    explicit InkIcon(QByteArray svg) : svg_(std::move(svg)) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        const auto role = mode == QIcon::Selected ? QPalette::HighlightedText : QPalette::WindowText;
        QByteArray inked = svg_;
        inked.replace("\"#000\"", '"' + QGuiApplication::palette().color(group, role).name().toLatin1() + '"');
        QSvgRenderer(inked).render(painter, QRectF(rect));
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap pixmap(size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paint(&painter, QRect({}, size), mode, state);
        return pixmap;
    }
    QIconEngine* clone() const override { return new InkIcon(svg_); }

  private:
    QByteArray svg_;
};

}  // namespace

QIcon icon(const QString& name) {
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return QIcon(new InkIcon(file.readAll()));
}

}  // namespace howlmap::app
