// SPDX-License-Identifier: GPL-3.0-or-later
// Taps on an instrument, loaded or recorded: its modes, and what they make of the chosen pickup.
#pragma once
#include <QWidget>
#include <memory>
#include <optional>

#include "app/document/document.h"
#include "app/document/worker.h"
#include "app/panels/soundcheck/sound_source.h"
#include "core/audio/tap.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTableWidget;

namespace howlmap::app {

class BodyCurve;

class TapPage : public QWidget {
    Q_OBJECT
  public:
    TapPage(Document& document, QWidget* parent);
    /// The pickup that is to have the modes, by id.
    void set_input(const QString& id);
    QString input() const;
    void load(const QString& path);
    void record(std::unique_ptr<SoundSource> source);  ///< until stop_recording() or a minute has passed
    bool busy() const { return worker_.busy(); }
    const std::optional<TapFindings>& findings() const { return findings_; }

  public Q_SLOTS:
    void choose();
    void record_or_stop();
    void stop_recording();
    void put_on_pickup();

  Q_SIGNALS:
    void analysed();  ///< findings() are new; absent: it failed, and the words say why

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    QWidget* build_side();
    void analyse(std::function<tl::expected<ShortRecording, std::string>()> read, const QString& name);
    void show_findings(const QString& name);
    void refresh_inputs();
    void refresh_curve();

    Document& document_;
    QComboBox* input_;
    QPushButton *record_, *apply_;
    QLabel* words_;
    QTableWidget* table_;
    BodyCurve* curve_;
    std::optional<TapFindings> findings_;
    std::unique_ptr<SoundSource> source_;
    ShortRecording recorded_;
    Worker worker_;
};

/// A dialog with the page, for one pickup. Deletes itself.
void open_tap_dialog(Document& document, const QString& input, QWidget* parent);

}  // namespace howlmap::app
